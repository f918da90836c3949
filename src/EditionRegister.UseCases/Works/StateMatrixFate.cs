using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Works;

/// <summary>States what became of a block, plate, stone or screen, and which impression proves it.</summary>
public sealed class StateMatrixFate(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="matrix">The matrix; null where the work has only one.</param>
    /// <param name="fate">One of <see cref="MatrixDeeds.Fates"/>.</param>
    /// <param name="date">When.</param>
    /// <param name="note">As written.</param>
    /// <param name="correct">The fate on record was a mistake.</param>
    /// <param name="proof">The code of the impression that proves it.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, matrix-not-found, matrix-not-named, fate-stated-already, fate-needs-reduction, code-not-found, proof-of-another-work.</exception>
    public bool Run(long work, long? matrix, string fate, RecordedDate date, string? note, bool correct, string? proof = null) => store.Write("state-matrix-fate", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var meant = matrix is not { } id ? MatrixNamed.Find(found, null) : found.Matrices.FirstOrDefault(one => one.Id == id) ?? throw WorkRefusals.NoSuchMatrix(found, id);
        Impression? sheet = proof is null ? null : ImpressionsChosen.Find(writing.Read, ImpressionChoice.OfCode(proof))[0].Sheets[0];
        MatrixDeeds.StateFate(found, meant, fate, date, note, sheet, correct, writing.On(Root.Work(work)));

        return true;
    });
}
