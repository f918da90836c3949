using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Moves;

/// <summary>The last links of some sheets' chains as somebody saw them, so that no later step is taken back in their place.</summary>
/// <param name="Moves">Ids of links of whereabouts.</param>
/// <param name="Transfers">Ids of links of ownership.</param>
public sealed record LinksMeant(IReadOnlySet<long> Moves, IReadOnlySet<long> Transfers)
{
    public static LinksMeant LastOf(IReadOnlyList<Impression> sheets) => new(
        sheets.Where(sheet => sheet.Whereabouts.Count > 0).Select(sheet => sheet.Whereabouts[^1].Id).ToHashSet(),
        sheets.Where(sheet => sheet.Ownership.Count > 0).Select(sheet => sheet.Ownership[^1].Id).ToHashSet());
}
