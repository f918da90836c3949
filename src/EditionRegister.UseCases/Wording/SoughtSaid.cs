using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was understood of a search, said alike by commands and rooms. Of plain words there is nothing to say.</summary>
public static class SoughtSaid
{
    /// <summary>“c. 2019” was looked for as 2014 to 2024; “A/P 2” as artist's proof 2. Null where all of it was words.</summary>
    public static string? Whole(Sought sought)
    {
        ArgumentNullException.ThrowIfNull(sought);
        var said = Worth(sought).Select((part, at) => $"“{part.Written}” {(at == 0 ? "was looked for " : "")}as {part.Meaning}").ToList();

        return said.Count == 0 ? null : string.Join("; ", said) + ".";
    }

    /// <summary>2014 to 2024; artist's proof 2. Beside the text that was typed; null where all of it was words.</summary>
    public static string? Short(Sought sought)
    {
        ArgumentNullException.ThrowIfNull(sought);
        var said = string.Join("; ", Worth(sought).Select(part => part.Meaning));

        return said.Length == 0 ? null : said;
    }

    /// <summary>An artist's proof that was looked for as an artist's proof is not worth a word.</summary>
    private static IEnumerable<SoughtPart> Worth(Sought sought) => sought.Understood.Where(part => SearchText.Fold(part.Written) != SearchText.Fold(part.Meaning));
}
