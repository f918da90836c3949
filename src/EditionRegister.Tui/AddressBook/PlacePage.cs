using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.AddressBook;

internal sealed class PlacePage(Desk desk, long place) : TextPage
{
    public override string Title => "PlacePage";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"{desk.Today} {place}"];
}
