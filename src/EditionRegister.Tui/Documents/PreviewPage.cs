using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>A paper before it is written, leaf by leaf; once it is written, where it is.</summary>
internal sealed class PreviewPage(Desk desk, Paper paper, PaperOrder first, PreviewLeaves leaves) : TextPage
{
    private readonly string _called = first.Chosen.Called;
    private PaperOrder _order = first;
    private PreviewLeaves _preview = leaves;
    private int _at;
    private Written? _written;

    public override string Title => _written is null ? "Preview" : "Written";

    public override string Explains =>
        "This is what will stand on the paper, word for word; nothing is written yet. Left and Right go through the sheets. "
        + "Where something cannot be made, the reason stands in its place, and what to do about it.";

    public override IReadOnlyList<KeyDeed> Keys => _written is not null ? [KeyDeed.Opens("Esc", "go back", () => Back.Once)] :
    [
        .. paper.IsWritten ? [new KeyDeed("w", "write", () => PaperWriting.BeginAsync(desk, paper, _order, Stay)) { Explained = "Writes the files; where that issues something, you are asked first." }] : (KeyDeed[])[],
        .. _preview.Fitting.Count is > 0 and var fitting && fitting < _preview.Leaves.Count ? [new KeyDeed("o", "leave out what cannot", LeaveOutAsync) { Explained = "Goes on with those sheets only of which it can be made." }] : (KeyDeed[])[],
        .. _at < _preview.Leaves.Count - 1 ? [KeyDeed.Doing("Right", "next sheet", () => _at++)] : (KeyDeed[])[],
        .. _at > 0 ? [KeyDeed.Doing("Left", "one before", () => _at--)] : (KeyDeed[])[],
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override IReadOnlyList<Line> Head(int width) => _written is not null ? [] :
    [
        .. Wrap.Of($"{paper.Name}; {_order.Chosen.Called}", width).Select(line => Line.Of(line, Tone.Quiet)),
        .. Wrap.Of(_preview.Sum, width).Select(line => Line.Of(line, Tone.Strong)),
        Line.Of($"{Counted.Figure(_at + 1)} of {Counted.Figure(_preview.Leaves.Count)}: {_preview.Leaves[_at].Of}", Tone.Key),
    ];

    public override IReadOnlyList<Line> Text(int width) => [.. _written is { } written ? WrittenText.Of(written, width) : _preview.Leaves[_at].Text(width)];

    private async Task<Opening?> LeaveOutAsync()
    {
        var codes = _order.Codes.Where(_preview.Fitting.Contains).ToList();
        _order = _order with { Codes = codes, Chosen = new ChosenSheets(new ImpressionChoice { Sheets = string.Join(", ", codes) }, $"{Counted.Sheets(codes.Count)} of {_called}") };
        (_preview, _at) = (await paper.PreviewAsync(desk, _order), 0);

        return null;
    }

    private Opening? Stay(Written written)
    {
        _written = written;
        return null;
    }
}
