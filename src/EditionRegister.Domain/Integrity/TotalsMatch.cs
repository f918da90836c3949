using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>An edition adds up: every number is there once, and no more sheets than numbers.</summary>
public sealed class TotalsMatch : IRule
{
    private const string LookAgain = "Count the sheets and the numbers again, and correct what was mistyped; where nothing was, compare with the newest copy in the backups folder.";

    public string Name => nameof(TotalsMatch);

    public string Sentence => "An edition adds up: every number of it is there once, each sheet has a number that is to be had, and there are no more sheets than numbers.";

    public string Basis => "arithmetic: the number behind the stroke is the count of numbers in the edition, proofs not among them (glossary of a fine print dealers' association)";

    public IEnumerable<Finding> Check(Work work) =>
        from place in work.Numberings
        from finding in NumbersAreThere(work, place.Edition, place.Numbering)
            .Concat(SheetsFit(work, place.Edition, place.Numbering))
            .Concat(KindFits(work, place.Edition, place.Numbering))
        select finding;

    private IEnumerable<Finding> NumbersAreThere(Work work, Edition edition, Numbering numbering)
    {
        var listed = numbering.Numbers.ToLookup(number => number.Ordinal);
        var subject = work.SubjectOf(edition, numbering);
        var of = $"of {work.CalledEdition(edition)}";

        if (listed.Where(same => same.Count() > 1).ToList() is { Count: > 0 } twice)
        {
            yield return this.Contradiction(subject, $"{Numbers(numbering, twice)} {of} {Is(twice.Count)} there more than once in the list of numbers.", LookAgain);
        }

        if (numbering.Size is not { } size || !edition.IsWhole)
        {
            yield break;
        }

        if (Missing(listed, size) is { Count: > 0 } missing)
        {
            yield return this.Contradiction(subject, $"{InWords.Numbers(numbering, missing)} {of} {Is(missing.Count)} missing from the list of numbers, which should run {Run(numbering, size)}.", LookAgain);
        }

        if (listed.Where(same => same.Key < 1 || same.Key > size).ToList() is { Count: > 0 } beyond)
        {
            yield return this.Contradiction(subject, $"{Numbers(numbering, beyond)} {of} {Is(beyond.Count)} in the list of numbers, which should run {Run(numbering, size)}.", LookAgain);
        }
    }

    // A size that damage made huge is told by its first gap, not by a list of two thousand million numbers.
    private static List<int> Missing(ILookup<int, NumberSlot> listed, int size)
    {
        List<int> missing = [];

        for (var number = 1; number <= Math.Min(size, listed.Count + 9_999); number++)
        {
            if (!listed.Contains(number))
            {
                missing.Add(number);
            }
        }

        return missing;
    }

    private static string Numbers(Numbering numbering, IEnumerable<IGrouping<int, NumberSlot>> slots) =>
        InWords.Numbers(numbering, slots.Select(same => same.Key));

    private static string Is(int count) => count == 1 ? "is" : "are";

    private static string Run(Numbering numbering, int size) => $"from {numbering.Spelled(1)} to {numbering.Spelled(size)}";

    private IEnumerable<Finding> SheetsFit(Work work, Edition edition, Numbering numbering)
    {
        var sheets = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).ToList();
        var listed = numbering.Numbers.ToLookup(number => number.Ordinal);

        if (numbering.Size is { } size && sheets.Count > size)
        {
            yield return this.Find(
                edition.IsOurs ? Severity.Contradiction : Severity.Query,
                work.SubjectOf(edition, numbering),
                $"{InWords.Count(sheets.Count, "sheet has", "sheets have")} a place in {work.CalledEdition(edition)}, which has {InWords.Count(size, "number", "numbers")} {numbering.Span}.",
                LookAgain);
        }

        foreach (var sheet in sheets.Where(sheet => sheet.Number is { } number && !listed.Contains(number) && Holds(numbering, number)))
        {
            yield return this.Contradiction(work.SubjectOf(sheet), $"{work.CalledSheet(sheet)} has a number that is missing from the list of numbers.", LookAgain);
        }

        foreach (var finding in sheets.Where(sheet => sheet.Number is not null).SelectMany(sheet => NumberIsToBeHad(work, sheet, listed[sheet.Number!.Value])))
        {
            yield return finding;
        }
    }

    private IEnumerable<Finding> NumberIsToBeHad(Work work, Impression sheet, IEnumerable<NumberSlot> slots) =>
        from slot in slots
        where slot.Fate is "never-printed" or "void" or "elsewhere"
        select this.Contradiction(
            work.SubjectOf(sheet),
            $"{work.CalledSheet(sheet)} is here, but its number is recorded as {slot.Fate.Replace('-', ' ')}.",
            "Correct what became of the number, or the number of the sheet.");

    private static bool Holds(Numbering numbering, int number) => number >= 1 && number <= (numbering.Size ?? number);

    private IEnumerable<Finding> KindFits(Work work, Edition edition, Numbering numbering)
    {
        var subject = work.SubjectOf(edition, numbering);

        if ((numbering.SizeState == "stated") != numbering.Size is not null)
        {
            var size = numbering.Size is { } n ? InWords.Figure(n) : "missing";
            yield return this.Contradiction(subject, $"The size of {subject} is {size}, but recorded as {numbering.SizeState}.", LookAgain);
        }
        else if (numbering.Kind is { InSize: true } && edition is { IsOurs: true, Kind: "limited" or "unique" } && numbering.IsOpen)
        {
            yield return this.Contradiction(subject, $"The edition of {work.CalledEdition(edition)} is {edition.Kind}, but its numbers are open.", "Declare the size, or correct the kind of the edition.");
        }
        else if (numbering.Kind is { InSize: true } && edition is { IsOurs: true, Kind: "open" } && numbering.Size is not null)
        {
            yield return this.Contradiction(subject, $"The edition of {work.CalledEdition(edition)} is open, but its numbers run {numbering.Span}.", "Correct the kind of the edition, or take the size away.");
        }
        else if (numbering.Kind is { InSize: true } && edition is { IsOurs: true, Kind: "unique" } && numbering.Size > 1)
        {
            yield return this.Contradiction(subject, $"The edition of {work.CalledEdition(edition)} is unique, but its numbers run {numbering.Span}.", "Correct the kind of the edition, or its size.");
        }
    }
}
