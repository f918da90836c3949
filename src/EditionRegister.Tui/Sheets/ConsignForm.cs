using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets are given into consignment.</summary>
internal static class ConsignForm
{
    private const string To = "To whom";
    private const string Standing = "They are";
    private const string Until = "Until";
    private const string Share = "Their share";
    private const string Agreement = "Agreement";
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var to = Known.Person(To, sheets, "a gallery, a shop, a friend who sells: Quay Gallery", isNeeded: true);
        var isNew = Newcomer.Field(Standing, to, mayBeUnknown: false);

        return new Form(
            $"Consign {sheets.Called}",
            [to, isNew, Fields.Date(Until), Fields.Share(Share), new Field(Agreement) { Form = "the agreement under which they go, as it is called or numbered" }, Fields.Today(Date, desk.Today), new Field(Note) { Form = "anything else that was agreed" }],
            form => Newcomer.ThenAsync(desk, form, to, isNew, () => SaveAsync(desk, sheets, form)))
        {
            Name = "consign",
            About = [sheets.About],
            OwnEachTime = [Note, Standing],
            Caution = "What a consignment agreement has to say is decided by local law, which differs from place to place; ask licensed advice where in doubt.",
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (day, until, share) = (DayOf.Deed(desk, form[Date]), Fields.DateOf(form[Until]) ?? RecordedDate.None, Fields.Hundredth(form[Share]));
        var (to, note, agreement) = (form[To]!, form[Note], form[Agreement]);
        var (count, name, meant) = await desk.Store.Do(register =>
        {
            var done = register.Consign.Run(sheets.ByCode, to, day, until, share, note, agreement);

            return (done, Names.Of(register, to), LastStep.Of(register, sheets));
        });

        return new Saved(SheetSaid.Consigned(count, name, day, until, share, agreement)) { Undo = LastStep.Undoing(desk, "consigning", sheets, meant, move: true, transfer: false) };
    }
}
