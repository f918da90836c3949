using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Numbers;
using EditionRegister.Store;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Records who is to have which numbers of an edition, as agreed, and takes that back.</summary>
public sealed class DivideEdition(RegisterStore store)
{
    /// <summary>Answers how many numbers.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="numbers">Which numbers: 1-20, A/P I or B.A.T.</param>
    /// <param name="who">Who is to have them, as in the address book.</param>
    /// <param name="agreed">When that was agreed, or null where nobody says.</param>
    /// <param name="note">As written.</param>
    /// <exception cref="Domain.RefusedException">entitlement-overlaps, number-named-twice, number-beyond-size, numbering-not-found or person-not-found.</exception>
    public int Run(long edition, string numbers, string who, RecordedDate? agreed = null, string? note = null) => store.Write("divide-edition", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var chosen = NumberGiving.Choose(work, found, NumberRanges.Read(numbers, work.OwnWords));
        Division.Agree(work, found, chosen, Persons.Find(writing.Read.Book, who), agreed ?? RecordedDate.None, note, writing.On(Root.Work(work.Id)));

        return chosen.Count;
    });

    /// <summary>Answers how many numbers.</summary>
    /// <exception cref="Domain.RefusedException">entitlement-not-found or entitlement-in-part.</exception>
    public int TakeBack(long edition, string numbers) => store.Write("take-division-back", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var chosen = NumberGiving.Choose(work, found, NumberRanges.Read(numbers, work.OwnWords));
        Division.TakeBack(work, found, chosen, writing.On(Root.Work(work.Id)));

        return chosen.Count;
    });
}
