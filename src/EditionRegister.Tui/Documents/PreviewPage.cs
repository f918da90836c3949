using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>A paper before it is written, leaf by leaf; once it is written, where it is.</summary>
internal sealed class PreviewPage(Desk desk, Paper paper, PaperOrder order, PreviewLeaves preview) : TextPage
{
    private int _at;
    private Written? _written;

    public override string Title => _written is null ? "Preview" : "Written";

    public override string Explains =>
        "This is what will stand on the paper, word for word; nothing is written yet. Left and Right go through the sheets. "
        + "Where something cannot be made, the reason stands in its place, and what to do about it.";

    public override IReadOnlyList<KeyDeed> Keys => _written is not null ? [KeyDeed.Opens("Esc", "go back", () => Back.Once)] :
    [
        .. paper.IsWritten ? [new KeyDeed("w", "write", () => PaperWriting.BeginAsync(desk, paper, order, Stay)) { Explained = "Writes the files; where that issues something, you are asked first." }] : (KeyDeed[])[],
        .. _at < preview.Leaves.Count - 1 ? [KeyDeed.Doing("Right", "next sheet", () => _at++)] : (KeyDeed[])[],
        .. _at > 0 ? [KeyDeed.Doing("Left", "one before", () => _at--)] : (KeyDeed[])[],
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override IReadOnlyList<Line> Head(int width) => _written is not null ? [] :
    [
        .. Wrap.Of($"{paper.Name}; {order.Chosen.Called}", width).Select(line => Line.Of(line, Tone.Quiet)),
        .. Wrap.Of(preview.Sum, width).Select(line => Line.Of(line, Tone.Strong)),
        Line.Of($"{Counted.Figure(_at + 1)} of {Counted.Figure(preview.Leaves.Count)}: {preview.Leaves[_at].Of}", Tone.Key).Then("   Up and Down move through the text.", Tone.Quiet),
    ];

    public override IReadOnlyList<Line> Text(int width) => [.. _written is { } written ? WrittenText.Of(written, width) : preview.Leaves[_at].Text(width)];

    private Opening? Stay(Written written)
    {
        _written = written;
        return null;
    }
}
