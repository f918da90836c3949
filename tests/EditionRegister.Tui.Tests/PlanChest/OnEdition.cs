using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>Opens an edition as other rooms do, by its number.</summary>
internal static class OnEdition
{
    private const string Opener = "*";

    public static Task OpenAsync(this TestHouse house, long edition) => house.House.OpenAsync(new EditionPage(house.House.Desk, edition));

    // Other rooms lead to a page by a choice picked; so does this.
    private static async Task OpenAsync(this House house, Page page)
    {
        await house.GoAsync(RoomName.PlanChest);
        house.Here.Open(new Door(page));
        await house.PressAsync(Opener);
    }

    private sealed class Door(Page page) : TextPage
    {
        public override string Title => "Door";

        public override string Explains => "";

        public override IReadOnlyList<KeyDeed> Keys => [KeyDeed.Opens(Opener, "open", () => new GoTo(RoomName.PlanChest, page))];

        public override IReadOnlyList<Line> Text(int width) => [];
    }
}
