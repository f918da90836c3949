using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>
/// The arithmetic of sheets going through the passes of a run. In each pass: in + added = out + spoiled + held out. Sheets that a pass leaves aside
/// stay at hand, so of 12 at hand a pass over 4 of them that spoils 1 leaves 8 aside + 3 = 11.
/// </summary>
public static class PassBalance
{
    /// <summary>
    /// What follows from what was counted. A pass over all sheets takes in what is at hand; the one count missing of five is what makes them come out even;
    /// and where as many came out as went in, none was spoiled and none held out. What does not follow stays unknown.
    /// </summary>
    /// <param name="counts">As counted.</param>
    /// <param name="atHand">Sheets at hand before the pass, or null.</param>
    /// <param name="takesAll">Whether all of them go through.</param>
    public static PassCounts Completed(PassCounts counts, long? atHand, bool takesAll)
    {
        counts = counts.In is null && takesAll && atHand is >= 0 and <= int.MaxValue ? counts with { In = (int)atHand } : counts;

        return counts switch
        {
            { In: { } went, Added: { } added, Out: { } came, Spoiled: null, HeldOut: null } when went + (long)added == came => counts with { Spoiled = 0, HeldOut = 0 },
            { In: null, Added: { } added, Out: { } came, Spoiled: { } spoiled, HeldOut: { } held } => counts with { In = Count((long)came + spoiled + held - added) },
            { In: { } went, Added: null, Out: { } came, Spoiled: { } spoiled, HeldOut: { } held } => counts with { Added = Count((long)came + spoiled + held - went) },
            { In: { } went, Added: { } added, Out: null, Spoiled: { } spoiled, HeldOut: { } held } => counts with { Out = Count((long)went + added - spoiled - held) },
            { In: { } went, Added: { } added, Out: { } came, Spoiled: null, HeldOut: { } held } => counts with { Spoiled = Count((long)went + added - came - held) },
            { In: { } went, Added: { } added, Out: { } came, Spoiled: { } spoiled, HeldOut: null } => counts with { HeldOut = Count((long)went + added - came - spoiled) },
            _ => counts,
        };
    }

    /// <summary>How many sheets were at hand before each pass and after it, in order; null where it cannot be told.</summary>
    public static IReadOnlyList<PassStanding> Of(PrintRun run)
    {
        List<PassStanding> standings = [];
        var atHand = run.Started - (long?)(run.Unused ?? 0);

        foreach (var pass in run.Passes.OrderBy(pass => pass.Ordinal))
        {
            var left = Left(pass, atHand);
            standings.Add(new PassStanding(pass, atHand, left));
            atHand = left;
        }

        return standings;
    }

    /// <summary>Sheets at hand for the next pass; null where it cannot be told.</summary>
    public static long? AtHand(PrintRun run) => Of(run) is [.., var last] ? last.Left : run.Started - (long?)(run.Unused ?? 0);

    /// <summary>What all passes of a run come to, each null where one pass was not counted.</summary>
    public static PassTotals Totals(PrintRun run)
    {
        var added = Sum(run, pass => pass.Added);

        return new PassTotals(
            run.Passes is [{ TakesAll: true, SheetsIn: { } first }, ..] ? first + added : null, Sum(run, pass => pass.Spoiled), Sum(run, pass => pass.HeldOut));
    }

    /// <summary>What was counted so far, taking what nobody counted as nothing.</summary>
    public static long AtLeast(PrintRun run, Func<Pass, int?> count) => run.Passes.Sum(pass => (long)(count(pass) ?? 0));

    private static long? Left(Pass pass, long? atHand)
    {
        var counts = PassCounts.Of(pass);
        long? came = counts.Out ?? (counts.In + (long?)counts.Added - counts.Spoiled - counts.HeldOut);

        return pass.TakesAll ? came : (atHand - counts.In + came) ?? (atHand + counts.Added - counts.Spoiled - counts.HeldOut);
    }

    private static long? Sum(PrintRun run, Func<Pass, int?> count) => run.Passes.All(pass => count(pass) is not null) ? AtLeast(run, count) : null;

    // What cannot be stays unknown here, and is refused where the pass is weighed.
    private static int? Count(long sheets) => sheets is >= 0 and <= int.MaxValue ? (int)sheets : null;
}

/// <summary>A pass with the sheets at hand before it and after it; null where it cannot be told.</summary>
public sealed record PassStanding(Pass Pass, long? AtHand, long? Left);

/// <summary>What all passes of a run come to: sheets put in, spoiled and held out; each null where one pass was not counted.</summary>
public sealed record PassTotals(long? PutIn, long? Spoiled, long? HeldOut);
