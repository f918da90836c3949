using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Works;

/// <summary>A print run on the bench, or a work that has none yet, and how far it has come.</summary>
/// <param name="Run">The run's place among those of its work; null where there is none yet.</param>
public sealed record OnBench(long Work, int? Run, string Title, string Maker, string? Technique, string Printed, string HowFar)
{
    /// <summary>The year of the work, and when the run was printed.</summary>
    public IReadOnlyList<RecordedDate> Dates { get; init; } = [];

    /// <summary>The techniques of the work by their words: as they were read when it was recorded, else as its text reads now.</summary>
    public IReadOnlyList<string> Techniques { get; init; } = [];
}

/// <summary>Lists works and their print runs, what was last recorded or corrected first.</summary>
public sealed class ListBench(RegisterStore store)
{
    public IReadOnlyList<OnBench> Run() => store.Read(reader => reader.Works()
        .SelectMany(Rows)
        .OrderByDescending(row => row.V).ThenByDescending(row => row.Row.Work).ThenByDescending(row => row.Row.Run)
        .Select(row => row.Row)
        .ToList());

    private static IEnumerable<(long V, OnBench Row)> Rows(Work work) => work.Runs.Count == 0
        ? [(work.V, Row(work, null, work.Year, "no print run yet"))]
        : work.Runs.Select(run => (run.V, Row(work, run.Ordinal, run.Printed, HowFar.Of(work, run))));

    private static OnBench Row(Work work, int? run, RecordedDate printed, string howFar) => new(work.Id, run, work.ShownTitle, work.ShownMaker, work.Technique, printed.Text ?? "", howFar)
    {
        Dates = [work.Year, printed],
        Techniques = work.Techniques.Count > 0 ? [.. work.Techniques.Select(one => one.Technique)] : [.. TechniqueReader.Read(work.Technique).Techniques.Select(technique => technique.Word)],
    };
}
