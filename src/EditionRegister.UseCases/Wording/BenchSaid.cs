using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What a deed on works, print runs and sheets has put into the register, in a sentence.</summary>
public static class BenchSaid
{
    public static string Recorded(Work work) => $"Work {Counted.Figure(work.Id)} recorded: {Called.Work(work)}, {work.ShownMaker}.";

    /// <param name="work">As it now stands.</param>
    /// <param name="changed">title, year, technique.</param>
    public static string PutRight(Work work, IReadOnlyList<string> changed) =>
        $"Work {Counted.Figure(work.Id)}, {Called.Work(work)}, put right: {string.Join(", ", changed)}.";

    public static string Joined(Work work, int people) => $"{Counted.Of(people, "person", "people")} named for {Called.Work(work)}.";

    public static string Recorded(Work work, Matrix matrix) => $"{MatrixText.Of(work, matrix)} recorded{(matrix.IsReduction ? ", a reduction" : "")}.";

    public static string FateStated(Work work, Matrix matrix) => $"{MatrixText.Of(work, matrix)}: {Called.Plain(matrix.Fate)}, {matrix.FateDate}.";

    public static string Recorded(Work work, PrintRun run) => $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} recorded: {RunBalance.Of(work, run)}.";

    public static string PutRight(Work work, PrintRun run) => $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} put right: {RunBalance.Of(work, run)}.";

}
