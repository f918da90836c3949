using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets pass to another owner without being sold: given, exchanged or bequeathed.</summary>
internal static class PassForm
{
    private const string To = "To whom";
    private const string Standing = "They are";
    private const string Against = "Against what";
    private const string Collected = "Taken along";
    private const string Despite = "Despite reservation";
    private const string From = "From";
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets, MoveKind kind)
    {
        var to = Known.Person(To, sheets, "whose they are from then on: Joost Averink");
        var isNew = Newcomer.Field(Standing, to, mayBeUnknown: true);

        return new Form(
            $"{sheets.Called}: {kind.Name}",
            [
                to,
                isNew,
                .. kind == MoveKind.Exchanged ? [new Field(Against) { Form = "what came in return: her Kite, 2/10" }] : (Field[])[],
                Field.YesNo(Collected, kind != MoveKind.Bequeathed),
                Known.Person(From, sheets, kind == MoveKind.Bequeathed ? "whose they were; empty is whoever owns them" : "whose they were; empty is the maker"),
                .. kind == MoveKind.Bequeathed ? [] : (Field[])[Field.YesNo(Despite, false)],
                Fields.Today(Date, desk.Today),
                new Field(Note) { Form = "anything else" },
            ],
            form => Newcomer.ThenAsync(desk, form, to, isNew, () => SaveAsync(desk, sheets, form, kind)))
        {
            Name = kind.Word,
            About = [sheets.About],
            OwnEachTime = [Note, Standing, Against],
            Caution = "Gifts, exchanges and bequests may be taxed, and an estate has rules of its own; ask licensed advice where in doubt.",
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, MoveKind kind)
    {
        var (to, from) = (form[To], form[From]);
        Passing passing = new(kind, null)
        {
            Date = DayOf.Deed(desk, form[Date]),
            Against = SendForm.Answer(form, Against),
            Collected = form.IsYes(Collected),
            DespiteReservation = SendForm.Answer(form, Despite) == "yes",
            Note = form[Note],
        };
        var (count, name, meant) = await desk.Store.Do(register =>
        {
            var done = register.PassSheets.Run(sheets.ByCode, to, from, passing);

            return (done, to is null ? null : Names.Of(register, to), LastStep.Of(register, sheets));
        });

        return new Saved(MovesSaid.Passed(count, kind, name, passing.Against, passing.Date)) { Undo = LastStep.Undoing(desk, "that step", sheets, meant, passing.Collected, transfer: true) };
    }
}
