using EditionRegister.Domain.Passes;
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

    public static string Recorded(Work work, Matrix matrix) => $"{MatrixText.Of(work, matrix)} recorded{(matrix.IsReduction ? ", a reduction" : "")}{(matrix.ShownCode is { } code ? $"; its code is {code}" : "")}.";

    public static string FateStated(Work work, Matrix matrix) => $"{MatrixText.Of(work, matrix)}: {Called.Plain(matrix.Fate)}, {matrix.FateDate}{Proof(work, matrix)}.";

    public static string PutRight(Work work, Matrix matrix) => $"{MatrixText.Of(work, matrix)} put right{(matrix.Place is { } place ? $"; it lies in {work.Book.PathOf(place)}" : "")}.";

    public static string CodeGiven(Work work, Matrix matrix) => $"{MatrixText.Of(work, matrix)} has the code {matrix.ShownCode}.";

    public static string Reached(Work work, Matrix matrix, MatrixState state) => $"{MatrixText.Of(work, matrix)}: state {state.Name} recorded{(state.Reached.IsKnown ? $", reached {state.Reached}" : "")}.";

    public static string Recorded(Work work, PrintRun run) => $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} recorded: {RunBalance.Of(work, run)}.";

    public static string PutRight(Work work, PrintRun run) => $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} put right: {RunBalance.Of(work, run)}.";

    public static string UnderWay(Work work, PrintRun run) =>
        $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} is under way: {Counted.Sheets(run.Started ?? 0)} started. Its passes are recorded with `edreg pass add {Counted.Figure(work.Id)}`.";

    public static string PileLaid(Work work, PrintRun run) => $"The pile of print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} is laid: {RunBalance.Of(work, run)}.";

    public static string Recorded(Work work, PrintRun run, Pass pass) => $"{PassText.Called(work, run, pass)} recorded: {PassText.Of(work, pass)}.{AtHand(run, pass)}";

    public static string PutRight(Work work, PrintRun run, Pass pass) => $"{PassText.Called(work, run, pass)} put right: {PassText.Of(work, pass)}.{AtHand(run, pass)}";

    /// <param name="work">As it now stands.</param>
    /// <param name="run">As it now stands.</param>
    /// <param name="pass">The place of the pass that was taken back.</param>
    public static string TakenBack(Work work, PrintRun run, int pass) =>
        $"Pass {Counted.Figure(pass)} of print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} taken back{(PassBalance.AtHand(run) is { } left ? $": {Counted.Sheets(left)} at hand again" : "")}.";

    private static string AtHand(PrintRun run, Pass pass) =>
        pass.Id == run.Passes[^1].Id && PassBalance.AtHand(run) is { } left ? $" {Counted.Sheets(left)} at hand." : "";

    private static string Proof(Work work, Matrix matrix) =>
        matrix.FateProof is { } id && work.Impressions.FirstOrDefault(sheet => sheet.Id == id) is { } sheet ? $"; {sheet.ShownCode} proves it" : "";
}
