using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets are kept for someone, and when they are let go again.</summary>
internal static class ReserveForm
{
    private const string For = "For whom";
    private const string Standing = "They are";
    private const string Until = "Until";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var person = Known.Person(For, sheets, "a name of the address book; empty for somebody not named");
        var isNew = Newcomer.Field(Standing, person, mayBeUnknown: false);

        return new Form(
            $"Reserve {sheets.Called}",
            [person, isNew, Fields.Date(Until), new Field(Note) { Form = "anything else that was said" }],
            form => person.Answer is null ? SaveAsync(desk, sheets, form) : Newcomer.ThenAsync(desk, form, person, isNew, () => SaveAsync(desk, sheets, form)))
        {
            Name = "reserve",
            About = [sheets.About, "A reserved sheet is not free to sell, until it is lifted or sold to the one it is kept for."],
            OwnEachTime = [Note, Standing],
        };
    }

    public static Question Lift(Desk desk, SheetsAtHand sheets) => Question.YesNo($"Lift the reservation of {sheets.Called}?", "lift it", async () =>
    {
        var count = await desk.Store.Do(register => register.LiftReservation.Run(sheets.ByCode));
        desk.Say(MovesSaid.Lifted(count), Pages.Tone.Good);

        return null;
    });

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (person, until, note) = (form[For], Fields.DateOf(form[Until]) ?? RecordedDate.None, form[Note]);
        var (count, name) = await desk.Store.Do(register =>
        {
            var done = register.ReserveSheets.Run(sheets.ByCode, person, until: until, note: note);

            return (done, person is null ? null : Names.Of(register, person));
        });

        return new Saved(MovesSaid.Reserved(count, name, until))
        {
            Undo = new Undoing("the reservation", () => desk.Store.Do(register => MovesSaid.Lifted(register.LiftReservation.Run(sheets.ByCode)))),
        };
    }
}
