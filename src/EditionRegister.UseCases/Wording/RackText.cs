using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Wording;

/// <summary>Whether sheets on the rack are dry enough to be sorted, as of a day.</summary>
public static class RackText
{
    /// <summary>ready since 2026-03-01; ready today; ready in 3 days (2026-03-04); when they are dry was not said.</summary>
    public static string When(RecordedDate ready, DateOnly today) =>
        !ready.IsKnown ? "when they are dry was not said"
        : ready.Earliest is { } first && today < first ? $"ready in {Counted.Of(first.DayNumber - today.DayNumber, "day")} ({ready})"
        : ready.Latest is { } last && today > last ? $"ready since {ready}"
        : ready.Earliest is { } on && on == ready.Latest ? "ready today"
        : $"ready about now ({ready})";

    /// <summary>What is to be said beside the sorting of sheets that are surely not dry yet; null where they may be.</summary>
    public static string? TooEarly(IEnumerable<ChosenOfWork> sorted, DateOnly today) =>
        sorted.SelectMany(one => one.Sheets.Select(one.Work.RunOf).OfType<PrintRun>()).Where(run => run.Ready.Earliest is { } first && today < first).MaxBy(run => run.Ready.Earliest) is { } wet
            ? $"By the rack they are {When(wet.Ready, today)}: look that nothing sets off."
            : null;
}
