using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>Records that a matrix was cut, bitten or reworked to another state.</summary>
public sealed class ReachMatrixState(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="matrix">Its number, code or part; null where the work has only one.</param>
    /// <param name="name">What the state is called: II.</param>
    /// <param name="reached">When it was reached.</param>
    /// <param name="note">What was done, as written.</param>
    /// <returns>The matrix's id.</returns>
    /// <exception cref="Domain.RefusedException">work-not-found, matrix-not-found, matrix-not-named, state-recorded-already, states-run-back.</exception>
    public long Run(long work, string? matrix, string name, RecordedDate reached, string? note) => store.Write("reach-matrix-state", writing =>
    {
        var meant = MatrixNamed.Find(writing.Read.WorkOrRefuse(work), matrix);
        MatrixDeeds.Reach(meant, name, reached, note, writing.On(Root.Work(work)));

        return meant.Id;
    });
}
