using EditionRegister.Domain.Impressions;

namespace EditionRegister.Tui.Bench;

/// <summary>How sheets were sorted before the last key, so that it can be taken back; and where the first of them lies in the pile.</summary>
internal sealed record SortedBefore(IReadOnlyList<Impression> Sheets, int First)
{
    public static SortedBefore Of(IReadOnlyList<Impression> sheets, IReadOnlyList<Impression> pile) =>
        new(sheets, Math.Max(0, pile.ToList().FindIndex(sheet => sheet.Id == sheets[0].Id)));
}
