using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

internal sealed class WorkPage(Desk desk, long work) : TextPage
{
    public override string Title => "WorkPage";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"{desk.Today} {work}"];
}
