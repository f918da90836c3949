namespace EditionRegister.Tui.Pages;

/// <summary>The rooms of the house, in the order of their digits.</summary>
internal enum RoomName
{
    /// <summary>Where no register is open yet.</summary>
    Welcome,
    PlanChest,
    Bench,
    Logbook,
    Findings,
    Documents,
    Shows,
    AddressBook,
}

/// <summary>How rooms are called on the screen.</summary>
internal static class RoomNames
{
    public static IReadOnlyList<RoomName> All { get; } = [.. Enum.GetValues<RoomName>().Where(room => room != RoomName.Welcome)];

    public static string Shown(this RoomName room) => room switch
    {
        RoomName.PlanChest => "Plan chest",
        RoomName.AddressBook => "Address book",
        _ => room.ToString(),
    };
}
