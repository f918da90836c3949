using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Asks which sheets get which numbers: the next of the pile, or those chosen; the first open numbers, or those named.</summary>
internal static class GiveNumbersForm
{
    private const string Numbers = "Numbers";
    private const string Numbering = "Numbering";
    private const string Sheets = "Sheets";
    private const int MostNamed = 3;

    /// <param name="desk">The desk.</param>
    /// <param name="seen">The edition.</param>
    /// <param name="here">The cell under the cursor; an open number there is proposed.</param>
    /// <param name="chosen">The marked sheets, or the one under the cursor.</param>
    public static Opening Of(Desk desk, EditionSeen seen, TraySlot? here, IReadOnlyList<TraySlot> chosen)
    {
        List<TraySlot> sheets = [.. chosen.Where(EditionDeeds.MayGetNumber)];
        var number = here is { Code: null, Cell.Letter: 'o' or '?', Typed: { } typed } ? typed : "";
        List<TraySlot> spares = [.. sheets.Where(slot => slot.Cell.Sheet!.Standing == "spare")];

        return spares.Count > 0 ? KeepingSpares.Asked(desk, seen, spares, () => Asked(desk, seen, number, sheets)) : Asked(desk, seen, number, sheets);
    }

    private static Form Asked(Desk desk, EditionSeen seen, string number, List<TraySlot> sheets) => new($"Give numbers of {seen.CalledEdition}", [
        Fields.Ranges(Sheets, string.Join(", ", sheets.Select(slot => slot.Code)), "codes, or empty for the kept ones without a number, as they are piled"),
        Fields.Ranges(Numbers, number, "such as 5, or A/P II; empty for the first open ones"),
        .. seen.Edition.Numberings.Count > 1 ? [Field.OneOf(Numbering, [.. seen.Edition.Numberings.Select(numbering => numbering.Span).Distinct()])] : (Field[])[],
    ], form => SaveAsync(desk, seen, form))
    {
        Name = "Give numbers",
        OwnEachTime = [Sheets, Numbers],
        About = [.. sheets.Count > 0 ? [] : (string[])[$"{Counted.Of(seen.ToBeNumbered.Count(), "kept sheet")} without a number."], .. seen.Edition.Numberings.Count > 1 ? ["Where no numbers are named, the first open ones of the numbering are given."] : (string[])[]],
    };

    private static async Task<Saved> SaveAsync(Desk desk, EditionSeen seen, Form form)
    {
        var id = seen.Edition.Id;
        var numbering = seen.Edition.Numberings.Count > 1 ? seen.Edition.Numberings.First(one => one.Span == form[Numbering]) : seen.Edition.Numberings[0];
        var (given, sentence) = await desk.Store.Do(register =>
        {
            var numbers = form[Numbers] is { } named ? ByHand(register, id, form[Sheets], named) : AsPiled(register, id, form[Sheets], numbering);
            var (work, edition) = register.LookAround.Edition(id);

            return (numbers, EditionSaid.NumbersGiven(work, edition, numbers.Count));
        });
        var which = given.Count <= MostNamed ? " " + string.Join(", ", given.Select(one => $"{one.Sheet.ShownCode} is {one.Spelled}")) + "." : "";

        return new Saved(sentence + which)
        {
            Undo = new Undoing("the numbers given", () => TakeNumbersBack.DoAsync(desk, new ImpressionChoice { Sheets = string.Join(", ", given.Select(one => one.Sheet.ShownCode)) })),
        };
    }

    private static IReadOnlyList<NumberGiven> AsPiled(Register register, long edition, string? sheets, Numbering numbering) =>
        register.GiveNumbers.AsPiled(edition, Named(numbering), sheets is null ? null : new ImpressionChoice { Sheets = sheets });

    private static IReadOnlyList<NumberGiven> ByHand(Register register, long edition, string? sheets, string numbers)
    {
        if (sheets is null)
        {
            var (work, found) = register.LookAround.Edition(edition);
            var wanted = NumberGiving.Choose(work, found, NumberRanges.Read(numbers, work.OwnWords)).Count;
            List<string> piled = [.. work.Impressions.Where(sheet => sheet.IsKept && sheet.Number is null).Take(wanted).Select(sheet => sheet.ShownCode)];
            sheets = piled.Count > 0 ? string.Join(", ", piled) : throw EditionRefusals.NothingToNumber(work);
        }

        return register.GiveNumbers.ByHand(edition, new ImpressionChoice { Sheets = sheets }, numbers);
    }

    /// <summary>As people type it; one without a size is named by its first number.</summary>
    private static string? Named(Numbering numbering) =>
        numbering is { Kind: { } kind, Notation: { } notation } ? (new NumberingPlan(kind, notation, numbering.Size ?? 1, "stated") { Name = numbering.Name }).ToString() : null;
}
