using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A block prints what it is on the day: the state it has come to, and nothing after its end.</summary>
public sealed class PassUsesMatrixAsItWas : IRule
{
    private const string Remedy = "Correct the date, the state or the block of the pass, or what became of the block.";

    public string Name => nameof(PassUsesMatrixAsItWas);

    public string Sentence => "A pass prints from matrices of its own work, in the state they had come to, not after their end; and a reduction never goes back to an earlier state.";

    public string Basis => "common practice, no source: what is cut away, reworked or cancelled does not come back";

    public IEnumerable<Finding> Check(Work work) =>
        from run in work.Runs
        from pass in run.Passes
        from used in pass.Matrices
        let sentence = Wrong(work, run, pass, used)
        where sentence is not null
        select this.Contradiction(work.SubjectOf(run), sentence, Remedy);

    private static string? Wrong(Work work, PrintRun run, Pass pass, PassMatrix used)
    {
        if (work.Matrices.FirstOrDefault(one => one.Id == used.Matrix) is not { } matrix)
        {
            return $"{Begun(work.CalledPass(run, pass))} is said to print from matrix {InWords.Figure(used.Matrix)}, which is none of {work.Called}.";
        }

        var state = matrix.States.FirstOrDefault(one => one.Id == used.State);

        if (state is null && used.State is not null)
        {
            return $"{Begun(work.CalledPass(run, pass))} is said to print a state of {matrix.CalledPart} that it never had.";
        }

        var (what, other) = MatrixMisuse.Of(work, run, pass, matrix, state);

        return what switch
        {
            Misuse.AfterItsEnd => $"{Begun(work.CalledPass(run, pass))} ({pass.Done}) printed from {matrix.CalledPart} after it was {matrix.Fate.Replace('-', ' ')} ({matrix.FateDate}).",
            Misuse.StateNotReached => $"{Begun(work.CalledPass(run, pass))} ({pass.Done}) printed state {state!.Name} of {matrix.CalledPart}, which it came to {state.Reached}.",
            Misuse.StateLeft => $"{Begun(work.CalledPass(run, pass))} ({pass.Done}) printed state {state!.Name} of {matrix.CalledPart}, which had gone on to state {other!.Name} ({other.Reached}).",
            Misuse.StateRunsBack => $"{Begun(work.CalledPass(run, pass))} printed state {state!.Name} of {matrix.CalledPart}, a reduction that printed state {other!.Name} in an earlier pass.",
            _ => null,
        };
    }

    private static string Begun(string pass) => $"{char.ToUpperInvariant(pass[0])}{pass[1..]}";
}
