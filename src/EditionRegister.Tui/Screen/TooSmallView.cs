using System.Globalization;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Screen;

/// <summary>Stands in for everything while the window is too small for it. Nothing is lost meanwhile.</summary>
internal sealed class TooSmallView(Pen pen) : Canvas(pen)
{
    protected override IReadOnlyList<Line> Picture(int width, int height)
    {
        var sentence = string.Create(
            CultureInfo.InvariantCulture,
            $"This window is {width} × {height}. The register needs {MainWindow.LeastWidth} × {MainWindow.LeastHeight}: make it larger, and all stands as it was.");

        return [.. Wrap.Of(sentence, Math.Max(1, width)).Select(line => (Line)line)];
    }
}
