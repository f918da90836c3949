using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Tests.Screen;

/// <summary>A page with a mistake in it: b meets it, or already the drawing.</summary>
internal sealed class FailingPage(bool inDrawing = false) : TextPage
{
    public override string Title => "A page with a mistake";

    public override string Explains => "b meets the mistake.";

    public override IReadOnlyList<KeyDeed> Keys => [KeyDeed.Doing("b", "fail", () => throw new InvalidOperationException("index out of the pile"))];

    public override IReadOnlyList<Line> Text(int width) => inDrawing ? throw new InvalidOperationException("index out of the screen") : ["Press b."];
}
