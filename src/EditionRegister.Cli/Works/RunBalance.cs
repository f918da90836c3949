using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>What was counted of a print run: 24 started = 2 unused + 3 spoiled + 19 in the pile, 4 of them held out.</summary>
internal static class RunBalance
{
    public static string Of(Work work, PrintRun run)
    {
        var pile = work.Impressions.Count(sheet => sheet.Run == run.Id);
        var heldOut = run.HeldOut is > 0 and var held ? $", {Counted.Figure(held)} of them held out" : "";
        var counted = run.Started is { } started ? $"{Counted.Figure(started)} started = {Counted.Figure(run.Unused ?? 0)} unused + {Counted.Figure(run.Spoiled ?? 0)} spoiled + " : "";

        return $"{counted}{Counted.Figure(pile)} in the pile{heldOut}{(run.Started is null ? "; sheets started are not counted" : "")}";
    }
}
