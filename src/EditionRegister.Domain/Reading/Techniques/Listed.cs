namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Makes a technique of the list from its words in five languages, each as one text with commas.</summary>
internal static class Listed
{
    // German adds an ending to the last word; English, French and Spanish add an s, which the table of words allows everywhere.
    private static readonly string[] GermanEndings = ["", "e", "en", "n", "s"];

    public static Technique As(TechniqueFamily family, string word, string name, string aat = "", string en = "", string fr = "", string de = "", string it = "", string es = "") => new(word, name)
    {
        Aat = aat,
        Family = family,
        Writings =
        [
            .. Each(en), .. Each(fr), .. Each(it), .. Each(es),
            .. from writing in Each(de) from ending in GermanEndings select writing + ending,
        ],
    };

    private static string[] Each(string writings) => writings.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
