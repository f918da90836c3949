using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Records that a sheet left out was worked over by hand into a unique work of its own.</summary>
public sealed class WorkOver(RegisterStore store)
{
    /// <summary>Answers the new work and its one sheet.</summary>
    /// <param name="code">The sheet left out.</param>
    /// <param name="over">What came of it; its makers are taken from <paramref name="makers"/>.</param>
    /// <param name="makers">Names or numbers from the address book; none are the makers of the old work.</param>
    /// <exception cref="Domain.RefusedException">code-not-found, title-missing, person-not-found, or one of <see cref="WorkingOverRefusals"/>.</exception>
    public (long Work, long Sheet) Run(string code, WorkingOver over, IReadOnlyList<string>? makers = null) => store.Write("work-over", writing =>
    {
        var chosen = ImpressionsChosen.Find(writing.Read, ImpressionChoice.OfCode(code))[0];
        var work = writing.NewId("work");
        var dated = over with
        {
            Date = over.Date.IsKnown ? over.Date : Today.Of(store),
            Makers = [.. (makers ?? []).Select(who => Persons.Find(writing.Read.Book, who))],
        };
        var onOld = writing.On(Root.Work(chosen.Work.Id));

        return (work, dated.Record(chosen.Work, chosen.Sheets[0], CodeDrawing.From(writing)(), onOld, work, writing.On(Root.Work(work))));
    });
}
