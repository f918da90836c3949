using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Tests.Screen;

/// <summary>A page that asks with f.</summary>
internal sealed class AskingPage(Func<Form> form) : TextPage
{
    public override string Title => "A page that asks";

    public override string Explains => "f opens the form.";

    public override IReadOnlyList<KeyDeed> Keys => [KeyDeed.Opens("f", "ask", form)];

    public override IReadOnlyList<Line> Text(int width) => ["Press f."];
}
