using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class WorkProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("title-missing", studio => studio.Register.RecordWork.Run(new NewWork(), ["1"])),
        new("maker-missing", studio => studio.Register.RecordWork.Run(new NewWork { Title = "Weir" }, [])),
        new("work-not-found", studio => studio.Register.LookAround.Work(77)),
        new("changed-meanwhile", studio => studio.Register.EditWork.Run(1, "Harbor", null, null, seen: 1)),
        new("changed-meanwhile", studio => new RegisterStore(studio.Register.Folder, Studio.Surroundings("another")).Write("edit-place", writing =>
        {
            writing.StillAsSeen("place", 77, 1, "name", "Drawer 2");

            return true;
        })),
        new("matrix-not-found", studio => Fate(studio, 1, 9, "cancelled")),
        new("matrix-not-found", studio => Fate(studio, 3, null, "cancelled")),
        new("matrix-not-named", studio => Fate(studio, 4, null, "cancelled")),
        new("role-held-already", studio =>
        {
            studio.Register.JoinWork.Run(1, [new("printer", "Quay Gallery")]);
            studio.Register.JoinWork.Run(1, [new("printer", "Quay Gallery")]);
        }),
        new("fate-stated-already", studio => Fate(studio, 4, 3, "cut-up")),
        new("fate-needs-reduction", studio => Fate(studio, 1, null, "cut-away-in-printing")),
        new("run-not-found", studio => studio.Register.SortPulls.Run(Studio.Pile(1, "1") with { Run = 2 }, "kept")),
        new("count-impossible", studio => Run(studio, 3, new() { Started = -1 })),
        new("pile-not-counted", studio => Run(studio, 3, new())),
        new("sheets-do-not-balance", studio => Run(studio, 3, new() { Started = 20, Spoiled = 3, Pile = 16 })),
        new("sheets-do-not-balance", studio => Run(studio, 3, new() { Started = 5, Spoiled = 4, Unused = 2 })),
        new("sheets-do-not-balance", studio => Run(studio, 3, new() { Pile = 2, HeldOut = 3 })),
        new("reduction-printed-already", studio => Run(studio, 2, new() { Pile = 4 })),
        new("matrix-cannot-print", studio => Run(studio, 4, new() { Pile = 4, Purpose = "proofing", Printed = RecordedDate.Read("2026-03") })),
        new("edition-closed", studio => Run(studio, 4, new() { Pile = 4 })),
    ];

    private static void Fate(Studio studio, long work, long? matrix, string fate) =>
        studio.Register.StateMatrixFate.Run(work, matrix, fate, RecordedDate.Read("2026-03"), null, correct: false);

    private static void Run(Studio studio, long work, NewPrintRun run) => studio.Register.RecordPrintRun.Run(work, run);
}
