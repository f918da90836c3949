using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.PlanChest;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked where a sheet left out was worked over by hand into a unique work of its own.</summary>
internal static class WorkOverForm
{
    private const string Title = "Its title";
    private const string Untitled = "It has no title";
    private const string Technique = "Technique";
    private const string Maker = "Worked over by";
    private const string Date = "Date";
    private const string Note = "Note";

    /// <exception cref="Domain.RefusedException">one-sheet-only, or one of <see cref="WorkingOverRefusals"/>.</exception>
    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        if (!sheets.IsOne)
        {
            throw ImpressionRefusals.OneAtATime("What a sheet was worked over into");
        }

        var (work, sheet) = sheets.First;

        if (sheet.Standing != "left-out")
        {
            throw WorkingOverRefusals.NotLeftOut(work, sheet);
        }

        return new Form($"Worked over: {sheets.Called}",
        [
            new Field(Title) { Form = "the title of the work that came of it" },
            Field.YesNo(Untitled, false),
            new Field(Technique) { Form = "empty is the technique of the print, worked over by hand", Known = typed => Fields.Matching(sheets.Known.Techniques, typed) },
            Known.Person(Maker, sheets, "empty is who made the print"),
            Fields.Today(Date, desk.Today),
            new Field(Note),
        ], form => SaveAsync(desk, sheets, form))
        {
            Name = "work over",
            About =
            [
                sheets.About,
                "The sheet stays among those left out of the print, and its record ends there. The new work has one sheet with a code of its own, which goes on where this one ends: label the paper anew.",
            ],
            OwnEachTime = [Title, Untitled, Note],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (work, sheet) = sheets.First;
        var made = await desk.Store.Do(register =>
        {
            var (id, _) = register.WorkOver.Run(
                sheet.ShownCode,
                new WorkingOver { Title = form[Title], Untitled = form.IsYes(Untitled), Technique = form[Technique], Date = DayOf.Deed(desk, form[Date]), Note = form[Note] },
                form[Maker] is { } who ? [who] : null);

            return register.LookAround.Work(id);
        });

        return new Saved(SortingSaid.WorkedOver(work, sheet, made), new ImpressionPage(desk, made.Impressions[0].ShownCode));
    }
}
