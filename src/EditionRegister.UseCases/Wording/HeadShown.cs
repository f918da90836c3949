namespace EditionRegister.UseCases.Wording;

/// <summary>Hashes in groups that can be compared with a certificate, which has the same groups.</summary>
public static class HeadShown
{
    private const int Group = 8;

    /// <summary>80bb56ab 4afafb18 cae0053e, to the end.</summary>
    public static string Grouped(string hex) => string.Join(' ', hex.Chunk(Group).Select(eight => new string(eight)));

    /// <summary>80bb56ab 4afafb18 …, as many whole groups as there are columns for, and one at least.</summary>
    public static string Begun(string hex, int columns)
    {
        var all = Grouped(hex);
        var groups = Math.Max(1, (columns - 1) / (Group + 1));

        return all.Length <= columns ? all : string.Concat(all.Take(groups * (Group + 1))) + "…";
    }
}
