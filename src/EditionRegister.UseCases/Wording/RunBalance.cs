using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was counted of a print run, and whether it comes out even.</summary>
public static class RunBalance
{
    /// <summary>24 started = 2 unused + 3 spoiled + 19 in the pile, 4 of them held out; 24 started = 2 unused + 2 spoiled + 20 cut into 2 each: 40 in the pile.</summary>
    public static string Of(Work work, PrintRun run)
    {
        var pile = Pile(work, run);

        if (run.IsUnderWay(pile))
        {
            return $"{Counted.Figure(run.Started!.Value)} started, under way{(run.Passes.Count == 0 ? "" : $": {Counted.Of(run.Passes.Count, "pass", "passes")} done{(PassBalance.AtHand(run) is { } left ? $", {Counted.Figure(left)} at hand" : "")}")}";
        }

        var cut = SheetsCut.Of(run);
        var heldOut = run.HeldOut is > 0 and var held ? $", {Counted.Figure(held)} of them held out" : "";
        var counted = run.Started is { } started ? $"{Counted.Figure(started)} started = {Counted.Figure(run.Unused ?? 0)} unused + {Counted.Figure(run.Spoiled ?? 0)} spoiled + " : "";
        var sheets = cut.IsOneToOne ? "" : $"{Counted.Figure(cut.Sheets(pile))} {Cut(cut)}: ";

        return $"{counted}{sheets}{Counted.Figure(pile)} in the pile{heldOut}{(run.Started is null ? "; sheets started are not counted" : "")}";
    }

    private static string Cut(SheetsCut cut) =>
        cut.MadeOf == 1 ? $"cut into {Counted.Figure(cut.CutInto)} each" : $"made up, {Counted.Figure(cut.MadeOf)} to {(cut.CutInto == 1 ? "an impression" : $"{Counted.Figure(cut.CutInto)} impressions")}";

    /// <summary>What is missing of the sheets started, in a sentence; also that nothing is.</summary>
    public static string Missing(Work work, PrintRun run)
    {
        if (run.Started is not { } started)
        {
            return "Whether a sheet is missing cannot be told, as the sheets started are not counted.";
        }

        if (run.IsUnderWay(Pile(work, run)))
        {
            return "Its sheets are on their way through the press; the pile is laid after the last pass.";
        }

        // Counts as damage may leave them must not overflow.
        var missing = (long)started - (run.Unused ?? 0L) - (run.Spoiled ?? 0L) - SheetsCut.Of(run).Sheets(Pile(work, run));

        return missing switch
        {
            0 => "The sheets balance: none is missing.",
            > 0 => $"{Counted.Sheets(missing)} of those started {(missing == 1 ? "is" : "are")} missing{Uncounted(run)}.",
            _ => $"{Counted.Sheets(-missing)} more than were started.",
        };
    }

    private static string Uncounted(PrintRun run) => (run.Unused, run.Spoiled) switch
    {
        (null, null) => "; unused and spoiled ones are not counted",
        (null, _) => "; unused ones are not counted",
        (_, null) => "; spoiled ones are not counted",
        _ => "",
    };

    private static int Pile(Work work, PrintRun run) => work.Impressions.Count(sheet => sheet.Run == run.Id);
}
