using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Every pass comes out even, and all of them together are what the run counted.</summary>
public sealed class PassesBalance : IRule
{
    private const string Remedy = "Count again, and correct the pass or the run that was mistyped; a count nobody made can be left unknown.";

    public string Name => nameof(PassesBalance);

    public string Sentence => "In every pass the sheets in and added are those out, spoiled and held out; and together the passes put in, spoiled and held out what their run says.";

    public string Basis => "arithmetic: in + added = out + spoiled + held out";

    public IEnumerable<Finding> Check(Work work) =>
        from run in work.Runs
        where run.Passes.Count > 0
        from sentence in run.Passes.SelectMany(pass => Own(work, run, pass)).Concat(Together(work, run))
        select this.Contradiction(work.SubjectOf(run), sentence, Remedy);

    private static IEnumerable<string> Own(Work work, PrintRun run, Pass pass)
    {
        var counts = PassCounts.Of(pass);
        var linked = work.Impressions.Count(sheet => sheet.AfterPass == pass.Id);

        if (counts.Missing is { } missing && missing != 0)
        {
            yield return $"In {work.CalledPass(run, pass)} {InWords.Figure(counts.In!.Value + (long)counts.Added!.Value)} sheets went in or were added, and {InWords.Figure((long)counts.Out!.Value + counts.Spoiled!.Value + counts.HeldOut!.Value)} came of it: {InWords.Figure(counts.Out.Value)} out, {InWords.Figure(counts.Spoiled.Value)} spoiled, {InWords.Figure(counts.HeldOut.Value)} held out.";
        }

        if (Named(pass.SpoiledBy) > counts.Spoiled)
        {
            yield return $"In {work.CalledPass(run, pass)} {Were(counts.Spoiled!.Value, "spoiled")}, and {InWords.Figure(Named(pass.SpoiledBy))} are told with their faults.";
        }

        if (Named(pass.HeldOutAs) > counts.HeldOut)
        {
            yield return $"In {work.CalledPass(run, pass)} {Were(counts.HeldOut!.Value, "held out")}, and {InWords.Figure(Named(pass.HeldOutAs))} are told with their kinds.";
        }

        if (SheetsCut.Of(run).IsOneToOne && linked > counts.HeldOut)
        {
            yield return $"In {work.CalledPass(run, pass)} {Were(counts.HeldOut!.Value, "held out")}, and {InWords.Count(linked, "impression is", "impressions are")} on record as held out after it.";
        }
    }

    // Proofs may also be set aside from the finished pile, so fewer held out on the way than in the run speak against nothing.
    private static IEnumerable<string> Together(Work work, PrintRun run)
    {
        var totals = PassBalance.Totals(run);
        var spoiled = PassBalance.AtLeast(run, pass => pass.Spoiled);
        var heldOut = PassBalance.AtLeast(run, pass => pass.HeldOut);

        if (totals.PutIn is { } putIn && run.Started is { } started && (putIn > started - (long)(run.Unused ?? 0) || (run.Unused is not null && putIn < started - (long)run.Unused)))
        {
            yield return $"In {work.CalledRun(run)} {InWords.Count(started, "sheet was", "sheets were")} started and {(run.Unused is { } unused ? InWords.Figure(unused) : "an unknown number")} left unused, but {InWords.Figure(putIn)} went into its passes.";
        }

        if (run.Spoiled is { } counted && (spoiled > counted || (totals.Spoiled is not null && spoiled < counted)))
        {
            yield return $"In {work.CalledRun(run)} {Were(counted, "spoiled")}, and its passes spoiled {InWords.Figure(spoiled)}.";
        }

        if (run.HeldOut is { } proofs && SheetsCut.Of(run).IsOneToOne && heldOut > proofs)
        {
            yield return $"In {work.CalledRun(run)} {Were(proofs, "held out as a proof", "held out as proofs")}, and its passes held out {InWords.Figure(heldOut)}.";
        }
    }

    private static long Named(IReadOnlyList<PassCount> counts) => counts.Sum(one => (long)one.Sheets);

    private static string Were(int count, string what, string? several = null) => InWords.Count(count, $"sheet was {what}", $"sheets were {several ?? what}");
}
