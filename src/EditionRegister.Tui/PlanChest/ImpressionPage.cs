using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

internal sealed class ImpressionPage(Desk desk, string code) : TextPage
{
    public override string Title => "ImpressionPage";

    public override string Explains => "Nothing here yet.";

    public override IReadOnlyList<KeyDeed> Keys => [];

    public override IReadOnlyList<Line> Text(int width) => [$"{desk.Today} {code}"];
}
