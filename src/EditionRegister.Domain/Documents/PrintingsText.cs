using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>How an edition was printed where that is not one day and one paper: which numbers come from which run, and how many there are so far.</summary>
public static class PrintingsText
{
    /// <summary>1/20 to 12/20 printed March 2026 on kozo; 13/20 to 20/20 printed January 2027 on hosho. Null where all numbered sheets are of one paper and date.</summary>
    public static string? Runs(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        var runs =
            (from numbering in edition.Numberings
             where numbering.Kind is { InSize: true }
             from sheet in work.Impressions
             where sheet.Numbering == numbering.Id && sheet.Number is not null
             let run = work.RunOf(sheet)
             where run is not null
             group (numbering, sheet.Number!.Value) by (run.Paper?.Trim(), run.Printed.Text) into same
             select (Run: same.Key, Numbers: same.ToList())).ToList();

        return runs.Count < 2 ? null : string.Join("; ", runs.Select(run => $"{Numbers(run.Numbers)} {When(run.Run.Text)}{On(run.Run.Item1)}"));
    }

    /// <summary>printed on demand, 12 of 20 so far; null where it is not said that it is.</summary>
    public static string? OnDemand(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        return edition.Printing != "on-demand" ? null
            : edition.Size is not { } size ? $"printed on demand, {InWords.Figure(PrintingOf.PrintedSoFar(work, edition))} so far"
            : $"printed on demand, {InWords.Figure(PrintingOf.PrintedSoFar(work, edition))} of {InWords.Figure(size)}{(IsOver(work, edition) ? "" : " so far")}";
    }

    /// <summary>10 of 12 numbers printed; null where it is no short edition that is disclosed.</summary>
    public static string? Short(Edition edition)
    {
        ArgumentNullException.ThrowIfNull(edition);

        if (edition.FellShort != "disclosed" || edition.Size is not { } size)
        {
            return null;
        }

        var never = edition.Numberings.Where(numbering => numbering.Kind is { InSize: true }).Sum(numbering => numbering.Numbers.Count(slot => slot.Fate == "never-printed"));

        return never == 0 ? null : $"{InWords.Figure(size - never)} of {InWords.Count(size, "number", "numbers")} printed";
    }

    // No number is waiting any more.
    private static bool IsOver(Work work, Edition edition) => edition.IsClosed || !edition.Numberings.Any(numbering =>
        numbering.Kind is { InSize: true } && NumbersProposed.OpenIn(work, numbering) > 0);

    private static string Numbers(IEnumerable<(Numbering Numbering, int Number)> numbers) =>
        InWords.List([.. numbers.GroupBy(one => one.Numbering.Id).Select(same => InWords.Numbers(same.First().Numbering, same.Select(one => one.Number)))]);

    private static string When(string? printed) => printed is null ? "printed, when is not known," : $"printed {DateInWords.Of(RecordedDate.Read(printed))}";

    private static string On(string? paper) => string.IsNullOrEmpty(paper) ? ", the paper is not known" : $" on {paper}";
}
