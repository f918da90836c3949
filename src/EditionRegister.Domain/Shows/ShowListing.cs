namespace EditionRegister.Domain.Shows;

/// <summary>One sheet's place in the list of a show. Taken off, it keeps its place, and gets it back when it is added again.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Impression">The sheet.</param>
/// <param name="Ordinal">Its place in the list, from one.</param>
/// <param name="Standing">listed or taken-off.</param>
public sealed record ShowListing(long Id, long V, long Impression, int Ordinal, string Standing)
{
    public bool IsListed => Standing == "listed";
}
