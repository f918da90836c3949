using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

internal sealed class BenchPage(Desk desk) : TextPage
{
    public override string Title => "Bench";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"Nothing here yet on {desk.Today:yyyy}."];
}
