using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was counted of a print run, and whether it comes out even.</summary>
public static class RunBalance
{
    /// <summary>24 started = 2 unused + 3 spoiled + 19 in the pile, 4 of them held out.</summary>
    public static string Of(Work work, PrintRun run)
    {
        var heldOut = run.HeldOut is > 0 and var held ? $", {Counted.Figure(held)} of them held out" : "";
        var counted = run.Started is { } started ? $"{Counted.Figure(started)} started = {Counted.Figure(run.Unused ?? 0)} unused + {Counted.Figure(run.Spoiled ?? 0)} spoiled + " : "";

        return $"{counted}{Counted.Figure(Pile(work, run))} in the pile{heldOut}{(run.Started is null ? "; sheets started are not counted" : "")}";
    }

    /// <summary>What is missing of the sheets started, in a sentence; also that nothing is.</summary>
    public static string Missing(Work work, PrintRun run)
    {
        if (run.Started is not { } started)
        {
            return "Whether a sheet is missing cannot be told, as the sheets started are not counted.";
        }

        // Counts as damage may leave them must not overflow.
        var missing = (long)started - (run.Unused ?? 0L) - (run.Spoiled ?? 0L) - Pile(work, run);

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
