using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Draws up the map of an edition, cell by cell.</summary>
internal static class NumberMapMaker
{
    // Beyond this only numbers that something is known of get a cell: a size that damage made huge must not fill the memory.
    private const int MostCells = 10_000;

    public static NumberMap Make(Work work, Edition edition)
    {
        List<MapNumbering> numberings = [.. edition.Numberings.Select(numbering => Of(work, edition, numbering))];
        List<MapCell> beside = [.. work.Impressions.Where(sheet => sheet.Numbering is null).Select(sheet => Beside(work, sheet))];

        return new NumberMap
        {
            Edition = edition,
            Heading = work.CalledEdition(edition),
            Numberings = numberings,
            Beside = beside,
            Totals = NumberMapTotals.Of(work, edition, numberings),
            Division = DivisionShown.Of(work, edition),
            Legend = NumberMapLetters.Legend(numberings.SelectMany(numbering => numbering.Cells).Concat(beside)),
        };
    }

    private static MapNumbering Of(Work work, Edition edition, Numbering numbering)
    {
        var sheets = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).ToList();
        var given = sheets.Where(sheet => sheet.Number is not null).ToLookup(sheet => sheet.Number!.Value);
        var fates = numbering.Numbers.GroupBy(number => number.Ordinal).ToDictionary(same => same.Key, same => same.First().Fate);
        var numbers = Enumerable.Range(1, Math.Clamp(numbering.Size ?? 0, 0, MostCells)).Union(fates.Keys).Union(given.Select(same => same.Key)).Order();

        return new MapNumbering(
            numbering,
            numbering.Kind?.Name ?? numbering.KindWord,
            numbering.Span,
            [
                .. numbers.SelectMany(number => Cells(work, numbering, number, given[number], fates.GetValueOrDefault(number))),
                .. sheets.Where(sheet => sheet.Number is null).Select(sheet => Cell(work, sheet, null, work.NumberShown(sheet) ?? "number not known")),
            ]);
    }

    // A number given twice, by damage, shows both its sheets.
    private static IEnumerable<MapCell> Cells(Work work, Numbering numbering, int number, IEnumerable<Impression> sheets, string? fate) =>
        sheets.Select(sheet => Cell(work, sheet, number, numbering.Spelled(number))).DefaultIfEmpty(Cell(numbering, number, fate));

    private static MapCell Cell(Numbering numbering, int number, string? fate)
    {
        var (letter, words) = NumberMapLetters.OfFate(fate);

        return new MapCell(number, numbering.Spelled(number), letter, null, words);
    }

    private static MapCell Cell(Work work, Impression sheet, int? number, string spelled)
    {
        var (letter, words) = SheetOnMap.Of(work, sheet);

        return new MapCell(number, spelled, letter, sheet, words);
    }

    private static MapCell Beside(Work work, Impression sheet) => Cell(work, sheet, null, sheet.Standing switch
    {
        "kept" => "kept, not numbered",
        "pulled" => "pulled, not sorted",
        "held-out" => "held out, not numbered",
        _ => sheet.Standing.Replace('-', ' '),
    });
}
