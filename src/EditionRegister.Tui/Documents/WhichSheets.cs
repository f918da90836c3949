using EditionRegister.Domain.Numbers;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>Asks which sheets are meant: the marked ones, those of an edition, a place or a show, some by code, or all.</summary>
internal static class WhichSheets
{
    private const string Codes = "Codes";

    /// <param name="desk">The desk.</param>
    /// <param name="asked">The question.</param>
    /// <param name="then">What is done with them; its sentence is said.</param>
    public static Choice Ask(Desk desk, string asked, Func<Picked, Task<Saved>> then) => new(asked,
    [
        .. desk.Marked.Count > 0 ? [new Choosable("m", $"the marked sheets: {Counted.Figure(desk.Marked.Count)}", () => TakeAsync(desk, Marked(desk), then))] : (Choosable[])[],
        Choosable.Opens("e", "those of an edition, all or some", () => EditionPick.Page(desk, then)),
        Choosable.Opens("p", "all that lie in a place", () => PlacePick.Page(desk, then)),
        Choosable.Opens("l", "the list of a show", () => ShowPick.Page(desk, then)),
        Choosable.Opens("c", "some by their codes", () => CodesForm(then)),
        new Choosable("a", "all that are not left out", () => TakeAsync(desk, All, then)),
    ]);

    private static Picked All => new(new ChosenSheets(new ImpressionChoice { All = true }, "all sheets that are not left out"), IsWhole: true);

    private static Picked Marked(Desk desk) => new(new ChosenSheets(new ImpressionChoice { Sheets = desk.Marked.AsText }, "the marked sheets"));

    /// <summary>Does it, says what came of it, and goes back to the page that asked.</summary>
    public static async Task<Opening?> TakeAndGoBackAsync(Desk desk, Picked picked, Func<Picked, Task<Saved>> then)
    {
        await TakeAsync(desk, picked, then);

        return Back.Once;
    }

    private static async Task<Opening?> TakeAsync(Desk desk, Picked picked, Func<Picked, Task<Saved>> then)
    {
        var saved = await then(picked);
        desk.Say(saved.Sentence, Tone.Good);
        desk.Undo = saved.Undo ?? desk.Undo;

        return null;
    }

    private static Form CodesForm(Func<Picked, Task<Saved>> then) => new("Sheets by their codes", [
        new Field(Codes) { IsNeeded = true, Form = "such as 7KQ4-M2X3, 9H2B-PPQA", Wrong = typed => Fields.Refused(() => NumberRanges.Read(typed)) },
    ], form => then(new Picked(new ChosenSheets(new ImpressionChoice { Sheets = form[Codes] }, $"sheets {form[Codes]}"))));
}
