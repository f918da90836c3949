using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>States what became of a block, plate, stone or screen.</summary>
public sealed class StateMatrixFate(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="matrix">The matrix; null where the work has only one.</param>
    /// <param name="fate">One of <see cref="MatrixDeeds.Fates"/>.</param>
    /// <param name="date">When.</param>
    /// <param name="note">As written.</param>
    /// <param name="correct">The fate on record was a mistake.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, matrix-not-found, matrix-not-named, fate-stated-already, fate-needs-reduction.</exception>
    public bool Run(long work, long? matrix, string fate, RecordedDate date, string? note, bool correct) => store.Write("state-matrix-fate", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        MatrixDeeds.StateFate(found, matrix ?? (found.Matrices is [var only] ? only.Id : throw WorkRefusals.WhichMatrix(found)), fate, date, note, correct, writing.On(Root.Work(work)));

        return true;
    });
}
