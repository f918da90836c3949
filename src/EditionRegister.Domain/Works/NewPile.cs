using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Passes;

namespace EditionRegister.Domain.Works;

/// <summary>The pile of a run that was under way: what came through its passes gets its codes, and what was held out on the way says after which pass.</summary>
public sealed record NewPile
{
    /// <summary>Sheets left unused; null leaves what was said before.</summary>
    public int? Unused { get; init; }

    /// <summary>Sheets spoiled; null takes what its passes counted.</summary>
    public int? Spoiled { get; init; }

    /// <summary>From when the sheets are dry enough to be sorted; null leaves what was said before.</summary>
    public RecordedDate? Ready { get; init; }

    /// <summary>Where the pile lies; null leaves it with the maker.</summary>
    public long? Place { get; init; }

    /// <summary>Lays the pile: the sheets held out on the way at its end, in the order of their passes.</summary>
    /// <exception cref="RefusedException">pile-laid-already, sheets-do-not-balance or sheets-do-not-divide.</exception>
    public IReadOnlyList<long> Lay(Work work, PrintRun run, Func<RegisterCode> drawCode, Deed deed)
    {
        if (!run.IsUnderWay(work.Impressions.Count(sheet => sheet.Run == run.Id)))
        {
            throw WorkRefusals.PileLaid(work, run);
        }

        var cut = SheetsCut.Of(run);
        var (unused, spoiled) = (Unused ?? run.Unused ?? 0, Spoiled ?? run.Spoiled ?? (int)PassBalance.AtLeast(run, pass => pass.Spoiled));
        var left = run.Started!.Value - spoiled - unused;
        var pulled = left < 0 ? throw WorkRefusals.TooFewStarted(run.Started.Value, spoiled, unused)
            : cut.Impressions(left) ?? throw WorkRefusals.Indivisible(run.Started.Value, spoiled, unused, cut);
        List<long> heldOut = [.. run.Passes.SelectMany(pass => Enumerable.Repeat(pass.Id, pass.HeldOut ?? 0))];

        if (heldOut.Count > pulled)
        {
            throw WorkRefusals.TooManyHeldOut(heldOut.Count, (int)pulled);
        }

        if (cut.IsOneToOne && PassBalance.Of(run) is [.., { Left: { } last }] && last + heldOut.Count != pulled)
        {
            throw WorkRefusals.Unbalanced(run.Started.Value, spoiled, unused, (int)(last + heldOut.Count), cut);
        }

        deed.Set("print_run", run.Id, ("unused", unused), ("spoiled", spoiled), ("held_out", Math.Max(heldOut.Count, run.HeldOut ?? 0)));

        if (Ready is not null)
        {
            deed.SetDate("print_run", run.Id, "ready", Ready);
        }

        return
        [
            .. Enumerable.Range(1, (int)pulled).Select(i =>
            {
                var at = i - 1 - ((int)pulled - heldOut.Count);

                return new NewSheet(run.Id, i, drawCode(), at < 0 ? "pulled" : "held-out") { AfterPass = at < 0 ? null : heldOut[at], Posthumous = run.Posthumous }.Record(work, Place, run.Printed, deed);
            }),
        ];
    }
}
