using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Stock;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What the newest stock-take of a place found, the register says too.</summary>
public sealed class StockTakesAgree : IRule
{
    public string Name => nameof(StockTakesAgree);

    public string Sentence =>
        "A sheet that the newest stock-take of its place did not find is not said to lie there still, and one that it found is not said to lie elsewhere; a later step or a later stock-take settles it.";

    public string Basis => "common practice, no source: a stock-take is compared with the books, and each difference is settled or explained";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        where sheet.Stock.Count > 0
        let newest = sheet.Stock[^1]
        where sheet.Whereabouts.All(link => link.V <= newest.V)
        from finding in Check(work, sheet, newest)
        select finding;

    private IEnumerable<Finding> Check(Work work, Impression sheet, SheetInStock newest)
    {
        var liesThere = work.Book.IsWithin(sheet.Where?.Place, newest.Place);
        var where = WhereInWords.Of(work, sheet);

        if (newest.Outcome == StockOutcome.Missing && liesThere)
        {
            yield return this.Query(
                work.SubjectOf(sheet),
                $"{work.CalledSheet(sheet)} was not found when stock was taken of {work.Book.PathOf(newest.Place)} ({newest.Taken}), and is still said to be {where}.",
                $"Look for it; then record where it is, or that nobody knows, with `edreg stock settle {InWords.Figure(newest.Take)} --missing unknown`.");
        }
        else if (newest.Outcome == StockOutcome.Stranger && sheet.Where?.Place != newest.Place)
        {
            yield return this.Note(
                work.SubjectOf(sheet),
                $"{work.CalledSheet(sheet)} was found when stock was taken of {work.Book.PathOf(newest.Place)} ({newest.Taken}), and is said to be {where}.",
                $"Put it back where it belongs, or record that it lies where it was found with `edreg stock settle {InWords.Figure(newest.Take)} --strangers put-away`.");
        }
    }
}
