using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Where a sheet was and whose on a day that is past: as it was recorded then, and as it is known now, where the two differ.</summary>
/// <param name="Work">The work, as recorded then where it was, else as now.</param>
/// <param name="Sheet">The sheet, likewise.</param>
/// <param name="Then">In words; null where it was not on record then.</param>
/// <param name="Now">In words; null where it is no more on record, or known now not to have been printed by then.</param>
/// <param name="Entry">The entry that newly says so, or null.</param>
public sealed record SheetThenAndNow(Work Work, Impression Sheet, string? Then, string? Now, long? Entry)
{
    /// <summary>Every sheet of a work of which then and now tell different things of the day.</summary>
    public static IEnumerable<SheetThenAndNow> Of(Work? then, WorkByDay? now)
    {
        var before = then?.Impressions.ToDictionary(sheet => sheet.Id) ?? [];

        foreach (var id in before.Keys.Union(now?.Sheets.Keys ?? []))
        {
            var was = before.GetValueOrDefault(id);
            var found = now?.Sheets.GetValueOrDefault(id);
            var (recorded, known) = (was is null ? null : Words(then!, was), found is null ? null : Words(now!.Work, found));

            if (recorded != known)
            {
                yield return new SheetThenAndNow(was is null ? now!.Work : then!, was ?? found!.Impression, recorded, known, found is null ? null : Newest(found));
            }
        }
    }

    private static string Words(Work work, Impression sheet) => $"{WhereInWords.Of(work, sheet)}, belongs to {WhereInWords.OwnerOf(work, sheet)}";

    private static string Words(Work work, SheetByDay sheet)
    {
        string[] possible =
        [
            .. sheet.PossibleMoves.Select(link => $"perhaps already {WhereInWords.Of(work, link.To)} ({link.Moved})"),
            .. sheet.PossibleTransfers.Select(link => $"perhaps already {WhereInWords.OwnerOf(work, link.To)}'s ({link.Passed})"),
        ];

        return string.Join("; ", [Words(work, sheet.Impression), .. possible]);
    }

    private static long? Newest(SheetByDay sheet) => sheet.Impression.Whereabouts.Select(link => link.V)
        .Concat(sheet.Impression.Ownership.Select(link => link.V))
        .Concat(sheet.PossibleMoves.Select(link => link.V))
        .Concat(sheet.PossibleTransfers.Select(link => link.V))
        .Select(v => (long?)v).Max();
}
