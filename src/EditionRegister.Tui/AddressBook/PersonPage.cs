using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.AddressBook;

internal sealed class PersonPage(Desk desk, long person) : TextPage
{
    public override string Title => "PersonPage";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"{desk.Today} {person}"];
}
