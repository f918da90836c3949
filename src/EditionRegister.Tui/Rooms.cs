using EditionRegister.Tui.AddressBook;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui;

/// <summary>Every room of the house, in the order of their digits.</summary>
internal static class Rooms
{
    public static IReadOnlyList<Room> Of(Desk desk) =>
    [
        new(RoomName.PlanChest, () => new BarePage("Plan chest")),
        new(RoomName.Bench, () => new BarePage("Bench")),
        new(RoomName.Logbook, () => new BarePage("Logbook")),
        new(RoomName.Findings, () => new BarePage("Findings")),
        new(RoomName.Documents, () => new BarePage("Documents")),
        new(RoomName.Shows, () => new BarePage("Shows")),
        new(RoomName.AddressBook, () => new PeoplePage(desk)),
    ];
}

internal sealed class BarePage(string name) : TextPage
{
    public override string Title => name;
    public override string Explains => "Nothing here yet.";
    public override IReadOnlyList<KeyDeed> Keys => [];
    public override IReadOnlyList<Line> Text(int width) => ["Nothing here yet."];
}
