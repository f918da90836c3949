using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What the register says of one block, plate, stone or screen.</summary>
public static class MatrixFacts
{
    public static IReadOnlyList<(string Label, string? Value)> Of(Work work, Matrix matrix) =>
    [
        ("Prints", matrix.Part),
        ("Work", $"{Called.Work(work)}, {work.ShownMaker}"),
        ("Material", matrix.Material ?? "not known"),
        ("Reduction", matrix.Reduction == "unknown" ? "not known" : matrix.Reduction),
        ("Made", matrix.Made.ToString()),
        ("Code", matrix.ShownCode ?? "none yet"),
        ("Place", matrix.Place is { } place ? work.Book.PathOf(place) : "not said"),
        ("Keeper", matrix.Keeper is { } keeper ? work.Book.NameOf(keeper) : null),
        ("Fate", Fate(matrix)),
        ("Proof of it", Proof(work, matrix)),
    ];

    /// <summary>cancelled, 2026-03-02: scored twice across.</summary>
    public static string Fate(Matrix matrix) => matrix.Fate == "undecided" ? "not decided yet"
        : $"{Called.Plain(matrix.Fate)}{(matrix.FateDate.IsKnown ? $", {matrix.FateDate}" : "")}{(matrix.FateNote is { } note ? $": {note}" : "")}";

    /// <summary>Its states: name, when it came to it, what was done.</summary>
    public static ShownTable States(Matrix matrix) => new(
        "States:",
        [new ShownColumn("state"), new ShownColumn("reached"), new ShownColumn("note")],
        [.. matrix.States.Select(state => (string[])[state.Name, state.Reached.ToString(), state.Note ?? ""])]);

    /// <summary>The passes it was used in.</summary>
    public static ShownTable Passes(Work work, Matrix matrix) => new(
        "Passes:",
        [new ShownColumn("run", true), new ShownColumn("pass", true), new ShownColumn("done"), new ShownColumn("what")],
        [.. Used(work, matrix).Select(used => (string[])[Counted.Figure(used.Run.Ordinal), Counted.Figure(used.Pass.Ordinal), used.Pass.Done.ToString(), PassText.What(work, used.Pass)])]);

    public static IEnumerable<(PrintRun Run, Pass Pass)> Used(Work work, Matrix matrix) =>
        from run in work.Runs from pass in run.Passes where pass.Matrices.Any(used => used.Matrix == matrix.Id) select (run, pass);

    private static string? Proof(Work work, Matrix matrix) =>
        matrix.FateProof is not { } id ? null : work.Impressions.FirstOrDefault(sheet => sheet.Id == id) is { } sheet ? $"{sheet.ShownCode}, {work.NumberOf(sheet)}" : "an impression that is not here";
}
