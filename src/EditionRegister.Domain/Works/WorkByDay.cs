using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Works;

/// <summary>
/// A work as today's register tells of a day that is past: sheets printed by then, their chains as far as they surely had come. Only printing, moves and
/// transfers bear dates; everything else is as it is recorded now.
/// </summary>
public sealed record WorkByDay(Work Work, IReadOnlyDictionary<long, SheetByDay> Sheets)
{
    /// <param name="work">As it is recorded now.</param>
    /// <param name="day">The day.</param>
    /// <param name="then">As it was recorded then; null where it was not.</param>
    public static WorkByDay Of(Work work, DateOnly day, Work? then)
    {
        ArgumentNullException.ThrowIfNull(work);

        var recorded = then?.Impressions.ToDictionary(sheet => sheet.Id) ?? [];

        var sheets = work.Impressions
            .Where(sheet => !(work.RunOf(sheet)?.Printed.Earliest > day))
            .Select(sheet => SheetByDay.Of(sheet, day, recorded.GetValueOrDefault(sheet.Id)))
            .ToList();

        return new WorkByDay(work with { Impressions = [.. sheets.Select(sheet => sheet.Impression)] }, sheets.ToDictionary(sheet => sheet.Impression.Id));
    }
}

/// <summary>A sheet with its chains cut at the end of a day, and the steps that may have been taken by then.</summary>
public sealed record SheetByDay(Impression Impression, IReadOnlyList<WhereaboutsLink> PossibleMoves, IReadOnlyList<OwnershipLink> PossibleTransfers)
{
    internal static SheetByDay Of(Impression sheet, DateOnly day, Impression? then)
    {
        var moves = CutByDay.Whereabouts(sheet.Whereabouts, day, id => then?.Whereabouts.Any(link => link.Id == id) ?? false);
        var transfers = CutByDay.Ownership(sheet.Ownership, day, id => then?.Ownership.Any(link => link.Id == id) ?? false);

        return new SheetByDay(sheet with { Whereabouts = moves.Sure, Ownership = transfers.Sure }, moves.Possible, transfers.Possible);
    }
}
