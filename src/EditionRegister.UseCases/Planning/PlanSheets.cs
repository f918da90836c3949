using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Planning;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Planning;

/// <summary>How many sheets to start, from a keep rate that is given or that the passes of this register teach.</summary>
/// <param name="Plan">At the rate itself.</param>
/// <param name="Safer">At the lower end of what the passes leave possible; null where the rate was given.</param>
/// <param name="Learned">What the passes of this register kept; null where the rate was given.</param>
public sealed record SheetsPlanned(SheetsToStart Plan, SheetsToStart? Safer, KeepRate? Learned);

/// <summary>Plans how many sheets to start. Looks only.</summary>
public sealed class PlanSheets(RegisterStore store)
{
    /// <param name="good">Good sheets wanted.</param>
    /// <param name="passes">How many passes they go through.</param>
    /// <param name="keep">The share one pass keeps, above 0 and at most 1; null learns it from the passes on record.</param>
    /// <param name="sure">How sure it is to be, between 0 and 1.</param>
    /// <exception cref="Domain.RefusedException">plan-impossible or keep-rate-not-known.</exception>
    public SheetsPlanned Run(int good, int passes, double? keep, double sure)
    {
        if (keep is { } given)
        {
            return new SheetsPlanned(SheetsToStart.Of(good, passes, given, sure), null, null);
        }

        var learned = Learned() ?? throw PlanRefusals.KeepNotKnown();

        return new SheetsPlanned(SheetsToStart.Of(good, passes, learned.Share, sure), learned.Lower > 0 ? SheetsToStart.Of(good, passes, learned.Lower, sure) : null, learned);
    }

    /// <summary>What the passes whose sheets were counted kept; a proof held out is a good sheet. Null where none was counted, or none kept one.</summary>
    public KeepRate? Learned() => store.Read(reader =>
    {
        var counted = (
            from work in reader.Works()
            from run in work.Runs
            from pass in run.Passes
            let counts = PassCounts.Of(pass)
            where counts is { In: not null, Spoiled: not null }
            let went = counts.In!.Value + (counts.Added ?? 0)
            where went > 0 && counts.Spoiled <= went
            select (Kept: went - counts.Spoiled!.Value, Of: went)).ToList();

        return counted.Sum(one => one.Kept) > 0 ? new KeepRate(counted.Sum(one => one.Kept), counted.Sum(one => one.Of), counted.Count) : null;
    });
}
