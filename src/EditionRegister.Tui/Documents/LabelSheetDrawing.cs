using EditionRegister.Domain.Documents;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>A sheet of labels, small: which places are used already, which are printed, which stay free.</summary>
/// <param name="sheet">The label sheet.</param>
/// <param name="first">The first place printed, from one.</param>
/// <param name="last">The last place printed.</param>
/// <param name="here">The place that is pointed at.</param>
internal sealed class LabelSheetDrawing(LabelSheet sheet, int first, int last, int here)
{
    // Sheets with more rows are drawn around the place pointed at.
    private const int MostRows = 10;

    private readonly int _digits = Counted.Figure(sheet.PerSheet).Length;

    private int Cell => _digits + 4;

    public IEnumerable<Line> Lines(int width)
    {
        var (rows, columns) = (Math.Min(sheet.Rows, MostRows), Math.Clamp((width - 2) / Cell, 1, sheet.Columns));
        var top = From((here - 1) / sheet.Columns, rows, sheet.Rows);
        var left = From((here - 1) % sheet.Columns, columns, sheet.Columns);

        return
        [
            .. Enumerable.Range(top, rows).Select(row => new Line([new Bit("  "), .. Enumerable.Range(left, columns).Select(column => Drawn((row * sheet.Columns) + column + 1))])),
            .. rows < sheet.Rows || columns < sheet.Columns ? [Line.Of("  (the sheet is larger than what is drawn)", Tone.Quiet)] : (Line[])[],
            Line.Of($"  -- used already   {Counted.Figure(first)} printed now   .. stays free", Tone.Quiet),
        ];
    }

    private Bit Drawn(int place)
    {
        var text = place < first ? "--" : place > last ? ".." : Counted.Figure(place);
        var shown = text.PadLeft(_digits);

        return place == here ? new Bit($" [{shown}] ", Tone.Here)
            : new Bit($"  {shown}  ", place >= first && place <= last ? Tone.Plain : Tone.Quiet);
    }

    private static int From(int at, int shown, int all) => Math.Clamp(at - (shown / 2), 0, all - shown);
}
