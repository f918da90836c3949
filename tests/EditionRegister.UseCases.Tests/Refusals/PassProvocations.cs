using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Passes of the one print run of “Harbour” (six sheets started) and of “Gull Rock”, a reduction.</summary>
internal static class PassProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("pass-not-found", studio => studio.Register.EditPass.Run(1, 1, 3, new PassTyped())),
        new("pass-not-found", studio => studio.Register.RecordPass.Again(1, 1, new PassTyped())),
        new("pass-not-the-last", studio =>
        {
            Pass(studio, new() { SheetsOut = 6 });
            Pass(studio, new() { SheetsOut = 6 });
            studio.Register.TakePassBack.Run(1, 1, 1);
        }),
        new("pass-does-not-balance", studio => Pass(studio, new() { SheetsIn = 6, SheetsOut = 5, Spoiled = 0, HeldOut = 0 })),
        new("pass-does-not-balance", studio => Pass(studio, new() { SheetsIn = 4, SheetsOut = 5 })),
        new("pass-does-not-balance", studio => Pass(studio, new() { SheetsOut = 5, Spoiled = 1, SpoiledBy = [("slur", 2)] })),
        new("pass-does-not-balance", studio => Type(studio, new PassTyped { Words = new PassWords { SheetsOut = 5, HeldOut = 1 }, Proofs = "5, 6" })),
        new("pass-takes-in-too-many", studio => Pass(studio, new() { SheetsIn = 7, SheetsOut = 7 })),
        new("pass-takes-in-too-many", studio =>
        {
            Pass(studio, new() { SheetsOut = 1, Spoiled = 5 });
            Pass(studio, new() { SheetsIn = 2, SheetsOut = 2 });
        }),
        new("pass-sheets-differ", studio => Type(studio, new PassTyped { Words = new PassWords { SheetsIn = 3 }, Sheets = "1-4" })),
        new("proof-held-out-already", studio =>
        {
            Type(studio, new PassTyped { Words = new PassWords { SheetsOut = 5 }, HeldOut = ["progressive=1"], Proofs = "6" });
            Type(studio, new PassTyped { Words = new PassWords { SheetsOut = 4 }, HeldOut = ["progressive=1"], Proofs = "6" });
        }),
        new("sheet-is-numbered", studio => Type(studio, new PassTyped { Words = new PassWords { SheetsOut = 5 }, HeldOut = ["state=1"], Proofs = "1" })),
        new("sheet-of-another-run", studio => Type(studio, new PassTyped
        {
            Words = new PassWords { Proofs = studio.Register.LookAround.Chosen(Studio.Pile(2, "1"))[0].Sheets },
        })),
        new("not-in-pile", studio => Type(studio, new PassTyped { Sheets = "5-9" })),
        new("chosen-twice", studio => Type(studio, new PassTyped { Sheets = "1-3, 2" })),
        new("count-impossible", studio => Pass(studio, new() { MakeReady = -1 })),
        new("fault-unknown", studio => Type(studio, new PassTyped { Spoiled = ["hiccup=1"] })),
        new("proof-kind-unknown", studio => Type(studio, new PassTyped { HeldOut = ["numbered=1"] })),
        new("pass-count-unreadable", studio => Type(studio, new PassTyped { Spoiled = ["slur=some"] })),
        new("pass-ink-of-which", studio => Type(studio, new PassTyped { Ink = "oil ink" })),
        new("pass-ink-of-which", studio => Type(studio, new PassTyped { Colours = ["red", "blue"], Ink = "oil ink" })),
        new("state-not-found", studio => Type(studio, new PassTyped { Matrices = ["1=II"] })),
        new("matrix-cannot-print", studio =>
        {
            studio.Register.StateMatrixFate.Run(1, null, "cancelled", RecordedDate.Read("2026-02-12"), null, correct: false);
            Type(studio, new PassTyped { Words = new PassWords { Done = RecordedDate.Read("2026-02-13") }, Matrices = ["1"] });
        }),
        new("state-not-yet", studio =>
        {
            studio.Register.ReachMatrixState.Run(1, null, "I", RecordedDate.Read("2026-02-12"), null);
            Type(studio, new PassTyped { Words = new PassWords { Done = RecordedDate.Read("2026-02-10") }, Matrices = ["1=I"] });
        }),
        new("states-run-back", studio =>
        {
            studio.Register.ReachMatrixState.Run(1, null, "I", RecordedDate.Read("2026-02-01"), null);
            studio.Register.ReachMatrixState.Run(1, null, "II", RecordedDate.Read("2026-02-05"), null);
            Type(studio, new PassTyped { Words = new PassWords { Done = RecordedDate.Read("2026-02-10") }, Matrices = ["1=I"] });
        }),
        new("states-run-back", studio =>
        {
            studio.Register.ReachMatrixState.Run(2, null, "I", RecordedDate.None, null);
            studio.Register.ReachMatrixState.Run(2, null, "II", RecordedDate.None, null);
            studio.Register.RecordPass.Run(2, 1, new PassTyped { Matrices = ["2=II"] });
            studio.Register.RecordPass.Run(2, 1, new PassTyped { Matrices = ["2=I"] });
        }),
        new("changed-meanwhile", studio =>
        {
            Pass(studio, new() { SheetsOut = 6 });
            studio.Register.EditPass.Run(1, 1, 1, new PassTyped { Words = new PassWords { Note = "dry" } }, seen: 1);
        }),
        new("sheets-do-not-balance", studio =>
        {
            studio.Register.RecordPrintRun.Run(3, new NewPrintRun { IsUnderWay = true, Started = 9 });
            studio.Register.RecordPass.Run(3, 1, new PassTyped { Words = new PassWords { SheetsOut = 7, Spoiled = 2 } });
            studio.Register.LayPile.Run(3, 1, new NewPile { Spoiled = 1 });
        }),
    ];

    private static void Pass(Studio studio, PassWords words) => Type(studio, new PassTyped { Words = words });

    private static void Type(Studio studio, PassTyped pass) => studio.Register.RecordPass.Run(1, 1, pass);
}
