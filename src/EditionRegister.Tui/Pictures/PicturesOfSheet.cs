using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;

namespace EditionRegister.Tui.Pictures;

/// <summary>Opens the pictures of a sheet; of several sheets of one work, those of the work.</summary>
internal static class PicturesOfSheet
{
    public static Opening? Open(Desk desk, SheetsAtHand sheets) =>
        new PicturesPage(desk, new PicturesWanted(sheets.First.Work.Id, sheets.IsOne ? sheets.First.Sheet.ShownCode : null));
}
