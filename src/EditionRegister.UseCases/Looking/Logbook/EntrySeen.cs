using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>One entry of the logbook whole.</summary>
/// <param name="Entry">As a list shows it.</param>
/// <param name="Facts">What it sets, row by row.</param>
/// <param name="Mates">The entries of its batch, itself included, oldest first and no more than a hundred; none where it has no batch.</param>
/// <param name="BatchSize">How many entries its batch has; 0 where it has none.</param>
/// <param name="Leaf">Its leaf hash (RFC 6962), lower-case hex.</param>
/// <param name="Head">The tree root after it, lower-case hex.</param>
/// <param name="Damage">Why its text cannot be read, or null.</param>
public sealed record EntrySeen(
    EntryListed Entry, IReadOnlyList<EntryFactSeen> Facts, IReadOnlyList<EntryListed> Mates, long BatchSize, string Leaf, string Head, string? Damage);

/// <summary>One fact in words: of which table and row, which fact, and its value; a sealed one as (sealed: value), or (erased).</summary>
public sealed record EntryFactSeen(string Table, long Id, string Fact, string Value)
{
    internal static EntryFactSeen Of(EntryFact fact) => new(
        Plain(fact.Table),
        fact.Id,
        fact.Standing is FactStanding.Erased ? "sealed facts" : Plain(fact.Fact),
        fact.Standing switch
        {
            FactStanding.Open => fact.Value ?? "(nothing)",
            FactStanding.Sealed => $"(sealed: {fact.Value ?? "nothing"})",
            FactStanding.Undone => "(undone)",
            FactStanding.Erases => "(what this entry had sealed is erased)",
            _ => "(erased)",
        });

    private static string Plain(string name) => name.Replace('_', ' ');
}
