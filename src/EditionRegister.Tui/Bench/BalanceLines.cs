using EditionRegister.Domain.Works;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>The balance of a run's sheets as pages show it, and what is missing.</summary>
internal static class BalanceLines
{
    public static IReadOnlyList<Line> Of(Work work, PrintRun run, int width)
    {
        var missing = RunBalance.Missing(work, run);
        var isEven = missing.StartsWith("The sheets balance", StringComparison.Ordinal);

        return
        [
            Line.Of(new string('─', width), Tone.Quiet),
            .. Wrap.Of($"Print run {Counted.Figure(run.Ordinal)}: {RunBalance.Of(work, run)}.", width).Select(line => (Line)line),
            .. Wrap.Of(missing, width).Select(line => Line.Of(line, isEven ? Tone.Good : Tone.Warning)),
        ];
    }
}
