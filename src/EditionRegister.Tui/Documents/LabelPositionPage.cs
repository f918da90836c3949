using EditionRegister.Domain.Documents;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>Where on a half-used sheet the labels begin: pointed at in a drawing of the sheet.</summary>
/// <param name="sheet">The label sheet.</param>
/// <param name="labels">How many there are to print.</param>
/// <param name="from">Where they begin now, from one.</param>
/// <param name="picked">Takes the place pointed at.</param>
internal sealed class LabelPositionPage(LabelSheet sheet, int labels, int from, Action<int> picked) : TextPage
{
    private int _here = from;

    public override string Title => "First label";

    public override string Explains =>
        "A sheet of labels that is used in part can go back into the printer: point at the first label that is still on it. "
        + "Count along the rows from the top left, as the sheet lies before you.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("Enter", "begin here", Picked),
        KeyDeed.Opens("Esc", "leave as it was", () => Back.Once),
    ];

    public override IReadOnlyList<Line> Text(int width) =>
    [
        .. Wrap.Of($"{sheet.Name}: {PapersSaid.Geometry(sheet)}. Arrows move, Enter begins here.", width).Select(line => (Line)line),
        Line.Empty,
        .. new LabelSheetDrawing(sheet, _here, Math.Min(sheet.PerSheet, _here - 1 + labels), _here).Lines(width),
        Line.Empty,
        Line.Of($"From position {Counted.Figure(_here)}.", Tone.Strong),
    ];

    public override bool Moves(string key, int height)
    {
        int? to = key switch
        {
            "Left" => _here - 1,
            "Right" => _here + 1,
            "Up" => _here - sheet.Columns,
            "Down" => _here + sheet.Columns,
            "Home" => 1,
            "End" => sheet.PerSheet,
            _ => null,
        };

        if (to is not { } place)
        {
            return base.Moves(key, height);
        }

        // Above the first row and below the last there is nothing: the place stays.
        _here = place < 1 || place > sheet.PerSheet ? _here : place;
        return true;
    }

    private Back Picked()
    {
        picked(_here);
        return Back.Once;
    }
}
