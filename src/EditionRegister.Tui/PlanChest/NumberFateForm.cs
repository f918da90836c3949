using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Asks what became of numbers that no sheet has.</summary>
internal static class NumberFateForm
{
    private const string Numbers = "Numbers";
    private const string Fate = "What became of them";
    private const string Story = "The story";

    /// <param name="desk">The desk.</param>
    /// <param name="seen">The edition.</param>
    /// <param name="number">The number under the cursor, as people type it, or null.</param>
    public static Form Of(Desk desk, EditionSeen seen, string? number) => new($"Numbers of {Called.Work(seen.Work)} that no sheet has", [
        Required(Fields.Ranges(Numbers, number ?? "", "such as 11-12, or A/P II")),
        Field.OneOf(Fate, [.. NumberingDeeds.Fates.Select(Called.Plain)], number is null ? null : "never printed"),
        new Field(Story) { Form = "a void number needs one: torn when it was signed, and destroyed" },
    ], form => SaveAsync(desk, seen, form))
    {
        Name = "What became of numbers",
        OwnEachTime = [Numbers],
        About = ["never printed: there is no such sheet. void: it was made and is no more, or bears it no longer.", "elsewhere: it left before this register began. unknown: nobody knows. open: a sheet may still get it."],
    };

    private static async Task<Saved> SaveAsync(Desk desk, EditionSeen seen, Form form)
    {
        var (id, numbers, fate) = (seen.Edition.Id, form[Numbers]!, form[Fate]!.Replace(' ', '-'));
        var (before, count, work, edition) = await desk.Store.Do(register =>
        {
            var (workBefore, editionBefore) = register.LookAround.Edition(id);
            var fates = Before(workBefore, editionBefore, numbers);
            var stated = register.StateNumberFate.Run(id, numbers, fate, form[Story]);
            var (workNow, editionNow) = register.LookAround.Edition(id);

            return (fates, stated, workNow, editionNow);
        });

        return new Saved(EditionSaid.Fate(work, edition, count, fate))
        {
            Undo = before is null ? null : new Undoing("what became of numbers", () => BackAsync(desk, id, before)),
        };
    }

    /// <summary>What stood there, number by number; null where a number was not in the list yet, which cannot be made so again.</summary>
    private static List<(string Number, NumberSlot Slot)>? Before(Domain.Works.Work work, Edition edition, string numbers)
    {
        List<(string, NumberSlot)> before = [];

        foreach (var chosen in NumberGiving.Choose(work, edition, NumberRanges.Read(numbers, work.OwnWords)))
        {
            if (chosen.Numbering.Numbers.FirstOrDefault(slot => slot.Ordinal == chosen.Ordinal) is not { } slot || chosen.Numbering.Typed(chosen.Ordinal) is not { } typed)
            {
                return null;
            }

            before.Add((typed, slot));
        }

        return before;
    }

    private static async Task<string> BackAsync(Desk desk, long edition, List<(string Number, NumberSlot Slot)> before)
    {
        await desk.Store.Do(register =>
        {
            foreach (var same in before.GroupBy(one => (one.Slot.Fate, one.Slot.Note)))
            {
                register.StateNumberFate.Run(edition, string.Join(", ", same.Select(one => one.Number)), same.Key.Fate, same.Key.Note);
            }
        });

        return $"{Counted.Of(before.Count, "number")} as before.";
    }

    internal static Field Required(Field field) => new(field.Label, field.Text) { Form = field.Form, Wrong = field.Wrong, Known = field.Known, IsNeeded = true };
}
