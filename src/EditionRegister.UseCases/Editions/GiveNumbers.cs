using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Gives numbers to kept sheets, as piled or by hand, and takes them back while that is honest.</summary>
public sealed class GiveNumbers(RegisterStore store)
{
    /// <summary>The first open numbers of a numbering, to kept sheets in the order of the pile (or to those chosen, in the order named).</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="numbering">Which numbering, as in "1-12" or "A/P I-II"; null is the numbered edition itself.</param>
    /// <param name="choice">Which sheets, or null for all kept ones without a number.</param>
    public IReadOnlyList<NumberGiven> AsPiled(long edition, string? numbering, ImpressionChoice? choice) => store.Write("give-numbers", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var sheets = choice is null ? null : SheetsOf(work, ImpressionsChosen.Find(writing.Read, choice));

        return NumberGiving.AsPiled(work, found, NumberingNamed(work, found, numbering), sheets, writing.On(Root.Work(work.Id)));
    });

    /// <summary>To each sheet the number named beside it.</summary>
    public IReadOnlyList<NumberGiven> ByHand(long edition, ImpressionChoice choice, string numbers) => store.Write("give-numbers", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var sheets = SheetsOf(work, ImpressionsChosen.Find(writing.Read, choice));

        return NumberGiving.ByHand(work, found, sheets, NumberGiving.Choose(work, found, NumberRanges.Read(numbers, work.OwnWords)), writing.On(Root.Work(work.Id)));
    });

    public int TakeBack(ImpressionChoice choice) =>
        DeedOnChosen.Run(store, "take-numbers-back", choice, (_, chosen, deed) => NumberGiving.TakeBack(chosen.Work, chosen.Sheets, deed));

    private static IReadOnlyList<Impression> SheetsOf(Domain.Works.Work work, IReadOnlyList<ChosenOfWork> chosen) =>
        chosen.FirstOrDefault(ofWork => ofWork.Work.Id != work.Id) is { } other ? throw EditionRefusals.OfAnotherWork(other.Sheets[0], other.Work, work)
        : chosen[0].Sheets;

    private static Numbering NumberingNamed(Domain.Works.Work work, Edition edition, string? numbering)
    {
        if (numbering is null)
        {
            return edition.Numberings.FirstOrDefault(one => one.Kind == NumberingKind.Numbered) ?? throw EditionRefusals.NoSuchNumbering("numbers without a mark", work);
        }

        var plan = NumberingPlan.Read(numbering, work.OwnWords);

        return NumberGiving.Named(work, edition, plan.Kind, plan.Notation, plan.Name, numbering);
    }
}
