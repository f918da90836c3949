using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Blocks with their states and fates, and runs that are under way, cut up or printed after the end of a block.</summary>
internal static class MatrixProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("state-recorded-already", studio =>
        {
            State(studio, 1, null, "I", "2026-01-10");
            State(studio, 1, null, "I", "2026-01-12");
        }),
        new("states-run-back", studio =>
        {
            State(studio, 1, null, "I", "2026-01-10");
            State(studio, 1, null, "II", "2026-01-09");
        }),
        new("states-run-back", studio => State(studio, 4, "3", "II", "2026-03-01")),
        new("matrix-not-found", studio => studio.Register.LookAround.MatrixOf(1, "sky")),
        new("fate-needs-reduction", studio =>
        {
            studio.Register.StateMatrixFate.Run(2, null, "cut-away-in-printing", RecordedDate.Read("2026-02-19"), null, correct: false);
            studio.Register.EditMatrix.Run(2, null, new MatrixCorrection { Reduction = "no" });
        }),
        new("matrix-has-code", studio => studio.Register.EditMatrix.Run(1, null, new MatrixCorrection(), givesCode: true)),
        new("changed-meanwhile", studio => studio.Register.EditMatrix.Run(1, null, new MatrixCorrection { Part = "key" }, seen: 1)),
        new("proof-of-another-work", studio => studio.Register.StateMatrixFate.Run(1, null, "cancelled", RecordedDate.None, null, correct: false, studio.Code(2, 1))),
        new("started-not-counted", studio => Run(studio, 3, new() { IsUnderWay = true })),
        new("pile-of-run-under-way", studio => Run(studio, 3, new() { IsUnderWay = true, Started = 9, Spoiled = 1 })),
        new("pile-laid-already", studio => studio.Register.LayPile.Run(1, 1, new NewPile())),
        new("cancellation-proof-is-proofing", studio => Run(studio, 3, new() { Started = 1, IsCancellationProof = true })),
        new("sheets-do-not-divide", studio => Run(studio, 3, new() { Started = 9, Spoiled = 2, MadeOf = 2 })),
        new("sheets-do-not-balance", studio => Run(studio, 3, new() { Started = 9, Spoiled = 1, CutInto = 2, Pile = 15 })),
        new("sheets-do-not-balance", studio => Run(studio, 3, new() { Started = 9, Spoiled = 1, MadeOf = 2, Pile = 5 })),
        new("sheets-do-not-balance", studio => Run(studio, 3, new() { Started = 9, MadeOf = 3, CutInto = 2, Pile = 5 })),
        new("reduction-printed-already", studio =>
        {
            studio.Register.RecordMatrix.Run(2, "block", "lino", "no", RecordedDate.None);
            Run(studio, 2, new() { Pile = 4, Purpose = "restrike" });
        }),
        new("matrix-cannot-print", studio =>
        {
            studio.Register.StateMatrixFate.Run(1, null, "cut-up", RecordedDate.Read("2026-03-01"), null, correct: false);
            Run(studio, 1, new() { Pile = 4, Purpose = "restrike", Printed = RecordedDate.Read("2026-03-02") });
        }),
    ];

    private static void State(Studio studio, long work, string? matrix, string name, string reached) =>
        studio.Register.ReachMatrixState.Run(work, matrix, name, RecordedDate.Read(reached), null);

    private static void Run(Studio studio, long work, NewPrintRun run) => studio.Register.RecordPrintRun.Run(work, run);
}
