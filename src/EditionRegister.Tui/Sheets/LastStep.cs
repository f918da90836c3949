using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.Sheets;

/// <summary>Takes back the last step of some sheets, but only the very steps that are meant.</summary>
internal static class LastStep
{
    /// <summary>The last links of the sheets as they now are.</summary>
    public static LinksMeant Of(Register register, SheetsAtHand sheets) =>
        LinksMeant.LastOf([.. register.LookAround.Chosen(sheets.ByCode).SelectMany(chosen => chosen.Sheets)]);

    /// <summary>Undoing what was just recorded.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="what">As the keys line calls it: “the sale”.</param>
    /// <param name="sheets">The sheets.</param>
    /// <param name="meant">The links just written.</param>
    /// <param name="move">The last step of where they are.</param>
    /// <param name="transfer">The last step of whose they are.</param>
    public static Undoing Undoing(Desk desk, string what, SheetsAtHand sheets, LinksMeant meant, bool move, bool transfer) =>
        new(what, () => TakeBackAsync(desk, sheets, meant, move, transfer));

    public static Task<string> TakeBackAsync(Desk desk, SheetsAtHand sheets, LinksMeant meant, bool move, bool transfer) => desk.Store.Do(register =>
        SheetSaid.TakenBack(register.TakeLinkBack.Run(sheets.ByCode, move, transfer, meant), move, transfer));
}
