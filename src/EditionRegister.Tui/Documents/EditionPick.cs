using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;
using Chest = EditionRegister.UseCases.Looking.PlanChest;

namespace EditionRegister.Tui.Documents;

/// <summary>Picks an edition, or a work that has none yet: all its sheets, or some by their numbers.</summary>
internal static class EditionPick
{
    private const string Numbers = "Numbers";

    private static readonly ListColumn[] Columns = [new("title", 20, Stretch: 2), new("maker", 14, Stretch: 1), new("year", 5), new("numbers", 22)];

    public static PickPage<ChestLine> Page(Desk desk, Func<Picked, Task<Saved>> then)
    {
        Chest? chest = null;

        return new PickPage<ChestLine>(
            "Pick an edition",
            "Every edition, and every work without one. Enter takes all numbered sheets of an edition, or all sheets of a work without numbers that are not left out; "
            + "r takes some of the numbers, as you type them.",
            "No work is recorded yet.",
            Columns,
            line => [line.Title, line.Makers, line.Year ?? "", line.Edition is null ? "no edition" : line.Numberings],
            async () => (chest = await desk.Store.Do(Opened)).Find(null),
            [
                new("Enter", "take all of it", line => AllAsync(desk, line, then)),
                new("r", "some of its numbers", line => Task.FromResult<Opening?>(Some(desk, line, then))),
            ])
        {
            Reading = new PickReading<ChestLine>(
                text => chest?.Read(text) ?? Sought.Words(text),
                part => chest!.FindSought(new Sought(null, [part])).ToHashSet<ChestLine>(ReferenceEqualityComparer.Instance)),
        };
    }

    private static Chest Opened(Register register)
    {
        var chest = register.PlanChest;
        chest.Open();

        return chest;
    }

    private static async Task<Opening?> AllAsync(Desk desk, ChestLine line, Func<Picked, Task<Saved>> then)
    {
        var (called, codes) = await desk.Store.Do(register => Sheets(register, line));

        if (codes.Count == 0)
        {
            desk.Say($"{called} has no {(line.Edition is null ? "" : "numbered ")}sheet yet. Nothing was picked.", Tone.Warning);
            return null;
        }

        return await WhichSheets.TakeAndGoBackAsync(desk, new Picked(new ChosenSheets(new ImpressionChoice { Sheets = string.Join(", ", codes) }, called), IsWhole: true), then);
    }

    private static Form? Some(Desk desk, ChestLine line, Func<Picked, Task<Saved>> then)
    {
        if (line.Edition is not { } edition)
        {
            desk.Say("It has no edition, and so no numbers. Nothing was picked. Enter takes all its sheets.", Tone.Warning);
            return null;
        }

        return new Form($"Numbers of {line.Title}", [
            new Field(Numbers) { IsNeeded = true, Form = "such as 3-7, 9, A/P I-III", Wrong = typed => Fields.Refused(() => NumberRanges.Plausible(typed)) },
        ], async form =>
        {
            var choice = new ImpressionChoice { Edition = edition, Sheets = form[Numbers] };

            // A number nobody has is met here, while it can still be put right.
            var work = await desk.Store.Do(register => register.LookAround.Chosen(choice)[0].Work);

            return await then(new Picked(new ChosenSheets(choice, $"{Called.Work(work)} {form[Numbers]}"))) with { Next = Back.Once };
        })
        { Name = "Numbers of an edition", OwnEachTime = [Numbers] };
    }

    private static (string Called, IReadOnlyList<string> Codes) Sheets(Register register, ChestLine line)
    {
        var work = register.LookAround.Work(line.Work);

        return work.Editions.FirstOrDefault(edition => edition.Id == line.Edition) is { } found
            ? (work.Editions.Count == 1 ? Called.Work(work) : Called.Edition(work, found), [.. Numbered(work, found).Select(sheet => sheet.ShownCode)])
            : (Called.Work(work), [.. work.Impressions.Where(sheet => sheet.Standing != "left-out").Select(sheet => sheet.ShownCode)]);
    }

    private static IEnumerable<Impression> Numbered(Work work, Edition edition) =>
        from numbering in edition.Numberings
        from sheet in work.Impressions
        where sheet.Numbering == numbering.Id && sheet.Number is not null
        orderby edition.Numberings.ToList().IndexOf(numbering), sheet.Number
        select sheet;
}
