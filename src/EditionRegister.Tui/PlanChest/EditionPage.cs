using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

internal sealed class EditionPage(Desk desk, long edition) : TextPage
{
    public override string Title => "EditionPage";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"{desk.Today} {edition}"];
}
