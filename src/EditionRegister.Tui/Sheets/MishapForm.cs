using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets were lost, stolen or destroyed.</summary>
internal static class MishapForm
{
    private const string What = "What happened";
    private const string Date = "Date";
    private const string Note = "How";

    public static Form Of(Desk desk, SheetsAtHand sheets) => new(
        $"{sheets.Called}: a mishap",
        [Field.OneOf(What, [.. Mishaps.Kinds.Select(kind => kind.Word)]), Fields.Today(Date, desk.Today), new Field(Note) { Form = "how it happened; a police or claim number" }],
        form => SaveAsync(desk, sheets, form))
    {
        Name = "mishap",
        About = [sheets.About, "Numbers stay given. A destroyed sheet's certificate is withdrawn."],
        OwnEachTime = [Note],
        Caution = "Report a theft to the police and to the insurer; the register is no proof of title.",
    };

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var (kind, day, note) = (MoveKind.Of(form[What]!)!, DayOf.Deed(desk, form[Date]), form[Note]);
        var (done, meant) = await desk.Store.Do(register => (register.RecordMishap.Run(sheets.ByCode, kind, day, note), LastStep.Of(register, sheets)));

        // A certificate that was withdrawn stays so: a new one is issued where the sheet turns out to be whole.
        return new Saved(MovesSaid.Befell(done, kind, day)) { Undo = done.Withdrawn.Count > 0 ? null : LastStep.Undoing(desk, "that step", sheets, meant, move: true, transfer: false) };
    }
}
