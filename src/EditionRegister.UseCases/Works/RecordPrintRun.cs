using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Records a print run and gives every sheet of its pile a code.</summary>
public sealed class RecordPrintRun(RegisterStore store)
{
    /// <summary>Answers the ids of the sheets in the order of the pile.</summary>
    /// <exception cref="Domain.RefusedException">work-not-found, place-not-found, sheets-do-not-balance, reduction-printed-already and others of <see cref="WorkRefusals"/>.</exception>
    public IReadOnlyList<long> Run(long work, NewPrintRun run, string? place = null) => store.Write("record-print-run", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var placed = place is null ? run : run with { Place = Places.Find(writing.Read.Book, place) };

        return placed.Record(found, CodeDrawing.From(writing), writing.On(Root.Work(work)));
    });
}
