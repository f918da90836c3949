using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Findings;

internal sealed class FindingsPage(Desk desk) : TextPage
{
    public override string Title => "Findings";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"Nothing here yet on {desk.Today:yyyy}."];
}
