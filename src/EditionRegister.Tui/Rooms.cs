using EditionRegister.Tui.AddressBook;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Findings;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Logbook;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Shows;

namespace EditionRegister.Tui;

/// <summary>Every room of the house, in the order of their digits.</summary>
internal static class Rooms
{
    public static IReadOnlyList<Room> Of(Desk desk) =>
    [
        new(RoomName.PlanChest, () => new PlanChestPage(desk)),
        new(RoomName.Bench, () => new BenchPage(desk)),
        new(RoomName.Logbook, () => new LogbookPage(desk)),
        new(RoomName.Findings, () => new FindingsPage(desk)),
        new(RoomName.Documents, () => new DocumentsPage(desk)),
        new(RoomName.Shows, () => new ShowsPage(desk)),
        new(RoomName.AddressBook, () => new PeoplePage(desk)),
    ];
}
