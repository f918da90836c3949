using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Corrects what the record says of a matrix, says where it now lies, and gives a code to one that has none.</summary>
public sealed class EditMatrix(RegisterStore store)
{
    /// <param name="work">The work.</param>
    /// <param name="matrix">Its number, code or part; null where the work has only one.</param>
    /// <param name="correction">What is put right.</param>
    /// <param name="place">Where it lies, as a path.</param>
    /// <param name="keeper">Who has it, by name or number.</param>
    /// <param name="givesCode">It was recorded before matrices had codes, and is to have one.</param>
    /// <param name="seen">The entry that had last written it when the caller looked at it.</param>
    /// <returns>The matrix's id.</returns>
    /// <exception cref="Domain.RefusedException">work-not-found, matrix-not-found, matrix-not-named, place-not-found, person-not-found, matrix-has-code, changed-meanwhile.</exception>
    public long Run(long work, string? matrix, MatrixCorrection correction, string? place = null, string? keeper = null, bool givesCode = false, long? seen = null) => store.Write("edit-matrix", writing =>
    {
        var meant = MatrixNamed.Find(writing.Read.WorkOrRefuse(work), matrix);
        var book = writing.Read.Book;
        var deed = writing.On(Root.Work(work));
        var placed = correction with
        {
            Place = place is null ? correction.Place : Places.Find(book, place),
            Keeper = keeper is null ? correction.Keeper : Persons.Find(book, keeper),
        };

        foreach (var (fact, value) in placed.Changes())
        {
            writing.StillAsSeen("matrix", meant.Id, seen, fact, value);
        }

        if (givesCode)
        {
            MatrixDeeds.GiveCode(meant.Id, meant.Code is null ? CodeDrawing.ForMatrices(writing)() : throw WorkRefusals.CodeGiven(meant), deed);
        }

        placed.Record(meant, deed);

        return meant.Id;
    });
}
