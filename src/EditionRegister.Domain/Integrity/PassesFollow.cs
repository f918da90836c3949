using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A pass takes in what the passes before it left, in the order in which they were done.</summary>
public sealed class PassesFollow : IRule
{
    public string Name => nameof(PassesFollow);

    public string Sentence => "A pass takes in no more sheets than the passes before it left at hand, and no fewer where all are said to go through; and passes are done in their order.";

    public string Basis => "arithmetic: what one pass gives out, and what it leaves aside, is all that the next can take in";

    public IEnumerable<Finding> Check(Work work) =>
        from run in work.Runs
        where run.Passes.Count > 0
        from finding in Sheets(work, run).Concat(Order(work, run))
        select finding;

    private IEnumerable<Finding> Sheets(Work work, PrintRun run)
    {
        foreach (var (pass, atHand, _) in PassBalance.Of(run))
        {
            if (pass.SheetsIn > atHand)
            {
                yield return this.Contradiction(
                    work.SubjectOf(run),
                    $"{Begun(work.CalledPass(run, pass))} took in {InWords.Count(pass.SheetsIn!.Value, "sheet", "sheets")}, and {InWords.Count(atHand!.Value, "was", "were")} left at hand.",
                    "Count again; sheets that joined late are recorded as added in the pass they joined.");
            }
            else if (pass.TakesAll && pass.SheetsIn < atHand && (pass.Ordinal > 1 || run.Unused is not null))
            {
                yield return this.Query(
                    work.SubjectOf(run),
                    $"{Begun(work.CalledPass(run, pass))} took in {InWords.Count(pass.SheetsIn!.Value, "sheet", "sheets")} of {InWords.Figure(atHand!.Value)} at hand, though all are said to have gone through.",
                    "Say that only some sheets went through it, or correct the count that was mistyped.");
            }
        }
    }

    private IEnumerable<Finding> Order(Work work, PrintRun run) =>
        from pair in run.Passes.Zip(run.Passes.Skip(1))
        where pair.Second.Done.SurelyBefore(pair.First.Done)
        select this.Query(
            work.SubjectOf(run),
            $"{Begun(work.CalledPass(run, pair.Second))} was done {pair.Second.Done}, before pass {InWords.Figure(pair.First.Ordinal)} ({pair.First.Done}).",
            "Correct the date that was mistyped.");

    private static string Begun(string pass) => $"{char.ToUpperInvariant(pass[0])}{pass[1..]}";
}
