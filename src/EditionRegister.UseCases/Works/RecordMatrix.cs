using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Records what a work is printed from, and gives it a code of its own.</summary>
public sealed class RecordMatrix(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">work-not-found.</exception>
    public long Run(long work, string what, string? material, string reduction, RecordedDate made) =>
        Run(work, new NewMatrix { What = what, Material = material, Reduction = reduction, Made = made });

    /// <param name="work">The work.</param>
    /// <param name="matrix">What is said of it.</param>
    /// <param name="place">Where it lies, as a path.</param>
    /// <param name="keeper">Who has it, by name or number.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, place-not-found, person-not-found.</exception>
    public long Run(long work, NewMatrix matrix, string? place = null, string? keeper = null) => store.Write("record-matrix", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var book = writing.Read.Book;
        var kept = matrix with { Place = place is null ? null : Places.Find(book, place), Keeper = keeper is null ? null : Persons.Find(book, keeper) };

        return kept.Record(found, CodeDrawing.ForMatrices(writing)(), writing.On(Root.Work(work)));
    });
}
