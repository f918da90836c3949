using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Lays the pile of a print run that was under way: what came through its passes gets its codes.</summary>
public sealed class LayPile(RegisterStore store)
{
    /// <summary>Answers the ids of the sheets in the order of the pile.</summary>
    /// <exception cref="Domain.RefusedException">work-not-found, run-not-found, pile-laid-already, sheets-do-not-balance, sheets-do-not-divide, place-not-found.</exception>
    public IReadOnlyList<long> Run(long work, int run, NewPile pile, string? place = null) => store.Write("lay-pile", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var meant = found.Runs.FirstOrDefault(one => one.Ordinal == run) ?? throw WorkRefusals.NoSuchRun(found, run);
        var placed = place is null ? pile : pile with { Place = Places.Find(writing.Read.Book, place) };

        return placed.Lay(found, meant, CodeDrawing.From(writing), writing.On(Root.Work(work)));
    });
}
