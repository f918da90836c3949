using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.ReadingIn;

/// <summary>Opens what is asked before a file is read in: which one; then what is in it is shown, before any of it is taken.</summary>
internal static class ReadInForm
{
    public static Opening New(Desk desk) => new GoTo(RoomName.PlanChest);
}
