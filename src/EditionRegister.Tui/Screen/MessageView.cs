using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Screen;

/// <summary>What came of the last key, in words, over as many lines as it takes.</summary>
internal sealed class MessageView(House house, Pen pen) : Canvas(pen)
{
    private const int Most = 6;

    /// <summary>Lines it needs for what is to be said; one at least.</summary>
    public int RowsFor(int width) => Math.Clamp(Wrap.Of(Said, Math.Max(1, width)).Count, 1, Most);

    private string Said => house.IsBusy && house.Desk.Message.Length == 0 ? "…" : house.Desk.Message;

    protected override IReadOnlyList<Line> Picture(int width, int height) => [.. Wrap.Of(Said, Math.Max(1, width)).Select(line => Line.Of(line, house.Desk.MessageTone))];
}
