using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What can be done to an edition and to its numbers, as far as it can be done now; what is done once in its life is behind one key.</summary>
internal sealed class EditionDeeds(Desk desk, EditionPage page)
{
    /// <summary>For the number under the cursor, where no sheet has it.</summary>
    public IEnumerable<KeyDeed> OfTheNumber()
    {
        if (page is { Seen: { Edition.IsClosed: false } seen, Here: { Code: null } here })
        {
            yield return KeyDeed.Opens("f", "say its fate", () => NumberFateForm.Of(desk, seen, here.Typed)) with
            {
                Explained = "Says what became of a number that no sheet has: never printed, void, elsewhere, not known, or open again.",
            };
        }
    }

    public IEnumerable<KeyDeed> OfTheEdition()
    {
        if (page.Seen is { Edition.IsClosed: false, HasOpenNumber: true } seen && (seen.ToBeNumbered.Any() || page.ChosenSlots.Any(MayGetNumber)))
        {
            yield return KeyDeed.Opens("g", "give numbers", () => GiveNumbersForm.Of(desk, seen, page.Here, page.ChosenSlots)) with
            {
                Explained = "Gives numbers to kept sheets: to the next ones of the pile, or to the marked ones. A spare can take an open number; it is kept first.",
            };
        }

        yield return KeyDeed.Opens("+", "more", More) with
        {
            Explained = "What is done rarely: mend the size, divide the edition, end it short, take numbers back, say that the edition is whole, close it, papers of all its sheets, its pictures, how it stood on a day, and the work at the Bench.",
        };
    }

    /// <summary>A kept sheet or a proof without a number, or a spare, which is kept first.</summary>
    public static bool MayGetNumber(TraySlot slot) => slot is { Numbering: null, Cell.Sheet.Standing: "kept" or "held-out" or "spare" };

    private Choice? More() => page.Seen is { } seen ? new Choice(Called.Edition(seen.Work, seen.Edition), [.. Offered(seen)]) : null;

    private IEnumerable<Choosable> Offered(EditionSeen seen)
    {
        var (work, edition) = (seen.Work, seen.Edition);
        yield return Choosable.Opens("b", "look at the work and its printing, at the Bench", () => new GoTo(RoomName.Bench, new Bench.WorkPage(desk, work.Id)));

        if (work.Set is not null)
        {
            yield return Choosable.Opens("s", "the copies of this set, and what lies in each", () => new Sets.SetPage(desk, work.Id));
        }

        yield return Choosable.Opens("y", "look at it as it stood on a day", () => AsOfForm.Of(desk, seen));
        yield return Choosable.Opens("p", "pictures that stand for it, and of its sheets and blocks", () => new Pictures.PicturesPage(desk, new Pictures.PicturesWanted(work.Id, Edition: edition.Id)));

        if (page.Slots.Any(slot => slot is { Numbering: not null, Code: not null }))
        {
            yield return Choosable.Opens("d", "documents of all its numbered sheets", () => PaperForms.Of(desk, Numbered(), Called.Edition(work, edition)));
        }

        if (!edition.IsClosed && page.ChosenSlots.Any(slot => slot.Numbering is not null) && page.Chosen() is { } chosen)
        {
            yield return Choosable.Opens("t", $"take back the number of {chosen.Called}", () => TakeNumbersBack.Asked(desk, chosen));
        }

        if (!edition.IsClosed)
        {
            yield return Choosable.Opens("f", "say what became of numbers that no sheet has", () => NumberFateForm.Of(desk, seen, page.Here is { Code: null, Typed: { } typed } ? typed : null));
            if (seen.HasOpenNumber && edition.IsWhole)
            {
                yield return Choosable.Opens("e", "end it as a short edition: no more will be printed", () => EndingShort.Asked(desk, seen));
            }

            yield return Choosable.Opens("m", "mend the size, where it was declared by mistake", () => MendSizeForm.Of(desk, seen));
        }

        if (edition is { IsWhole: false, IsOurs: true })
        {
            yield return Choosable.Opens("w", "say that the edition is whole: every number is accounted for here", () => MakeWhole.Asked(desk, seen));
        }

        if (edition is { IsClosed: false, IsWhole: true })
        {
            yield return Choosable.Opens("c", "close the edition", () => ClosingEdition.Asked(desk, seen));
        }

        yield return Choosable.Opens("v", "who is to have which numbers: divide the edition", () => new DivisionPage(desk, edition.Id));
        yield return Choosable.Opens("k", "kinds of numbering and faults of your own", () => new OwnWordsPage(desk));

        foreach (var other in work.Editions.Where(other => other.Id != edition.Id))
        {
            yield return Choosable.Opens(null, $"open edition {Counted.Figure(other.Ordinal)} of this work: {Called.Spans(other)}", () => new EditionPage(desk, other.Id));
        }
    }

    private ImpressionChoice Numbered() =>
        new() { Sheets = string.Join(", ", page.Slots.Where(slot => slot is { Numbering: not null, Code: not null }).Select(slot => slot.Code).Distinct()) };
}
