using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>How an edition is divided: who is to have which numbers, as agreed. Whose they are is told by the chain of ownership, not by this.</summary>
public static class Division
{
    /// <param name="work">The work.</param>
    /// <param name="edition">One of its editions.</param>
    /// <param name="numbers">The numbers, in the order named; each stretch of them becomes one entitlement.</param>
    /// <param name="person">Who is to have them.</param>
    /// <param name="agreed">When that was agreed.</param>
    /// <param name="note">As written.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">entitlement-overlaps, or number-named-twice.</exception>
    public static void Agree(Work work, Edition edition, IReadOnlyList<NumberChosen> numbers, long person, RecordedDate agreed, string? note, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);
        ArgumentNullException.ThrowIfNull(deed);
        Once(work, numbers);

        foreach (var number in numbers)
        {
            if (edition.Entitlements.FirstOrDefault(one => Covers(one, number)) is { } before)
            {
                throw DivisionRefusals.Overlaps(work, number, work.Book.NameOf(before.Person));
            }
        }

        foreach (var (numbering, first, last) in Stretches(numbers))
        {
            var id = deed.NewId("entitlement");
            deed.Set("entitlement", id, ("numbering", numbering.Id), ("first", first), ("last", last), ("person", person), ("note", note));
            deed.SetDate("entitlement", id, "agreed", agreed);
        }
    }

    /// <summary>Takes back what was agreed of these numbers, and only of these.</summary>
    /// <exception cref="RefusedException">entitlement-not-found or entitlement-in-part.</exception>
    public static void TakeBack(Work work, Edition edition, IReadOnlyList<NumberChosen> numbers, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);
        ArgumentNullException.ThrowIfNull(deed);
        Once(work, numbers);
        var meant = edition.Entitlements.Where(one => numbers.Any(number => Covers(one, number))).ToList();

        if (numbers.FirstOrDefault(number => !meant.Exists(one => Covers(one, number))) is { } free)
        {
            throw DivisionRefusals.NotAgreed(work, free);
        }

        foreach (var one in meant)
        {
            if (numbers.Count(number => Covers(one, number)) <= one.Last - one.First)
            {
                throw DivisionRefusals.InPart(work, edition.Find(one.Numbering)!, one, work.Book.NameOf(one.Person));
            }

            deed.Unset("entitlement", one.Id);
        }
    }

    public static bool Covers(Entitlement one, NumberChosen number)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(number);

        return one.Numbering == number.Numbering.Id && number.Ordinal >= one.First && number.Ordinal <= one.Last;
    }

    private static void Once(Work work, IReadOnlyList<NumberChosen> numbers)
    {
        if (numbers.GroupBy(number => (number.Numbering.Id, number.Ordinal)).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw EditionRefusals.NumberNamedTwice(twice.First().Spelled, work);
        }
    }

    private static IEnumerable<(Numbering Numbering, int First, int Last)> Stretches(IReadOnlyList<NumberChosen> numbers)
    {
        foreach (var same in numbers.GroupBy(number => number.Numbering.Id))
        {
            var ordinals = same.Select(number => number.Ordinal).Order().ToList();
            var first = ordinals[0];

            for (var i = 0; i < ordinals.Count; i++)
            {
                if (i + 1 == ordinals.Count || ordinals[i + 1] != ordinals[i] + 1)
                {
                    yield return (same.First().Numbering, first, ordinals[i]);
                    first = i + 1 < ordinals.Count ? ordinals[i + 1] : 0;
                }
            }
        }
    }
}
