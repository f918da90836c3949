namespace EditionRegister.UseCases.Wording;

/// <summary>Hashes in groups that can be compared with a certificate, which has the same groups.</summary>
public static class HeadShown
{
    private const int Group = 8;

    /// <summary>80bb56ab 4afafb18 …, as many groups as asked for.</summary>
    public static string Grouped(string hex, int groups = int.MaxValue)
    {
        var all = hex.Chunk(Group).Select(eight => new string(eight)).ToList();

        return string.Join(' ', all.Take(groups)) + (all.Count > groups ? " …" : "");
    }
}
