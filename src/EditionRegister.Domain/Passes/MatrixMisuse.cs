using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Passes;

/// <summary>Why a matrix surely did not print in a pass as it is recorded.</summary>
public enum Misuse
{
    None,

    /// <summary>It had come to its end before.</summary>
    AfterItsEnd,

    /// <summary>It had not come to that state yet.</summary>
    StateNotReached,

    /// <summary>It had gone on to another state before.</summary>
    StateLeft,

    /// <summary>A reduction printed a later state in an earlier pass.</summary>
    StateRunsBack,
}

/// <summary>Finds what is impossible about a matrix in a pass: by dates that surely conflict, and by the order of a reduction's states.</summary>
public static class MatrixMisuse
{
    public static (Misuse What, MatrixState? Other) Of(Work work, PrintRun run, Pass pass, Matrix matrix, MatrixState? state)
    {
        if (EndedBefore(work, run, matrix, pass.Done))
        {
            return (Misuse.AfterItsEnd, null);
        }

        if (state is null)
        {
            return (Misuse.None, null);
        }

        var left = matrix.States.FirstOrDefault(later => later.Ordinal > state.Ordinal && later.Reached.SurelyBefore(pass.Done));

        return pass.Done.SurelyBefore(state.Reached) ? (Misuse.StateNotReached, null)
            : left is not null ? (Misuse.StateLeft, left)
            : matrix.IsReduction && PrintedLater(run, pass, matrix, state) is { } later ? (Misuse.StateRunsBack, later)
            : (Misuse.None, null);
    }

    /// <summary>The matrix had surely come to its end; a cancelled one still prints its proof and disclosed restrikes, and the last cut comes before the last colour.</summary>
    private static bool EndedBefore(Work work, PrintRun run, Matrix matrix, RecordedDate done) =>
        MatrixDeeds.IsFinal(matrix.Fate)
        && matrix.FateDate.SurelyBefore(done)
        && !(matrix.Fate == "cancelled" && (run.IsCancellationProof || run.Purpose == "restrike"))
        && !(matrix.Fate == "cut-away-in-printing" && !work.Runs.Any(other => other.Ordinal < run.Ordinal && other.Purpose == "edition"));

    private static MatrixState? PrintedLater(PrintRun run, Pass pass, Matrix matrix, MatrixState state) => (
        from earlier in run.Passes
        where earlier.Ordinal < pass.Ordinal
        from used in earlier.Matrices
        where used.Matrix == matrix.Id
        let other = matrix.States.FirstOrDefault(one => one.Id == used.State)
        where other is not null && other.Ordinal > state.Ordinal
        select other).FirstOrDefault();
}
