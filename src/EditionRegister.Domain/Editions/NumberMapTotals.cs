using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>The lines under the map: what the edition comes to, and how much of it is accounted for.</summary>
internal static class NumberMapTotals
{
    public static IReadOnlyList<MapTotal> Of(Work work, Edition edition, IReadOnlyList<MapNumbering> numberings)
    {
        var totals = EditionTotals.Of(work, edition);

        return
        [
            new("edition size", totals.NotSure ?? Known(totals.Size)),
            .. totals.Proofs.Select(kind => new MapTotal(kind.Kind.PluralName, Known(kind.Count))),
            new("total of impressions", Known(totals.Total)),
            .. totals.SheetsPulled.Select(kind => new MapTotal($"pulled besides, {kind.Kind.PluralName}", Known(kind.Count))),
            .. Standing("spare sheets", totals.Spare),
            .. Standing("sheets left out", totals.LeftOut),
            .. Standing("sheets not yet sorted", work.Impressions.Count(sheet => sheet.Standing == "pulled")),
            .. AccountedFor(totals, numberings),
            .. Said("in words", edition.Statement is { } words ? $"“{words}”" : null),
            .. Said("rank", RankText.WithThoseBefore(work, edition)),
            .. Said("printing", PrintingsText.OnDemand(work, edition)),
            .. Said("intended", edition.Printing == "on-demand" || edition.FellShort is not null ? edition.Intended is { } intended ? InWords.Figure(intended) : null : null),
            .. Said("printed", PrintingsText.Runs(work, edition)),
            .. Said("short edition", edition.FellShort == "reset" ? "the size was set anew to what was printed" : PrintingsText.Short(edition)),
        ];
    }

    private static IEnumerable<MapTotal> Said(string label, string? value) => value is null ? [] : [new MapTotal(label, value)];

    private static string Known(long? count) => count is { } n ? InWords.Figure(n) : CertificateFacts.NotKnown;

    private static IEnumerable<MapTotal> Standing(string label, int sheets) => sheets == 0 ? [] : [new MapTotal(label, InWords.Figure(sheets))];

    /// <summary>A number is accounted for when its sheet is known, or when it is known that there is none here; one not known or still open is not.</summary>
    private static IEnumerable<MapTotal> AccountedFor(EditionTotals totals, IReadOnlyList<MapNumbering> numberings)
    {
        if (totals.Size is not { } size)
        {
            yield break;
        }

        var cells = numberings.Where(numbering => numbering.Numbering.Kind is { InSize: true }).SelectMany(numbering => numbering.Cells
            .Where(cell => cell.Ordinal >= 1 && cell.Ordinal <= numbering.Numbering.Size).DistinctBy(cell => cell.Ordinal)).ToList();
        var open = cells.Count(cell => cell is { Sheet: null, Letter: NumberMapLetters.Open });
        var unknown = cells.Count(cell => cell is { Sheet: null, Letter: NumberMapLetters.Unknown });
        string[] rest = [.. Part(open, "open"), .. Part(unknown, "not known")];

        yield return new("accounted for", $"{InWords.Figure(cells.Count - open - unknown)} of {InWords.Figure(size)}{(rest.Length > 0 ? $" ({string.Join(", ", rest)})" : "")}");
    }

    private static IEnumerable<string> Part(int count, string words) => count == 0 ? [] : [$"{InWords.Figure(count)} {words}"];
}
