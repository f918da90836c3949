using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.UseCases.Looking;

/// <summary>The numbers an edition has: every one up to the size where it is wholly here, else those that are known of it.</summary>
internal static class NumbersOfEdition
{
    /// <param name="edition">The edition.</param>
    /// <param name="known">The numbers known, by numbering and in order, where not all are there.</param>
    public static IEnumerable<NumbersThere> Of(Edition edition, ILookup<long, int> known) => edition.Numberings.SelectMany(numbering =>
        edition.Extent == "whole" && numbering.Size is { } size
            ? [NumbersThere.In(numbering, 1, size)]
            : Runs(known[numbering.Id]).Select(run => NumbersThere.In(numbering, run.From, run.To)));

    private static IEnumerable<(int From, int To)> Runs(IEnumerable<int> numbers)
    {
        (int From, int To)? run = null;

        foreach (var number in numbers)
        {
            if (run is { } before && number != before.To + 1)
            {
                yield return before;
                run = null;
            }

            run = (run?.From ?? number, number);
        }

        if (run is { } last)
        {
            yield return last;
        }
    }
}
