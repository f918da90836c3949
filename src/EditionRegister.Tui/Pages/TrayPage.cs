using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>A page that is a tray of numbered cells, group by group, one of them the current one.</summary>
internal abstract class TrayPage : Page
{
    // Pointer, mark, blank, letter, sign, blank.
    private const int AroundLabel = 6;

    private List<TrayRow> _rows = [];
    private IReadOnlyList<TrayGroup>? _laidOut;
    private int[] _starts = [];
    private int[] _widths = [];
    private int _width;
    private int _height;
    private int _current;

    public abstract IReadOnlyList<TrayGroup> Groups { get; }

    /// <summary>Counted through all groups; 0 where there is no cell.</summary>
    public int Current
    {
        get => Math.Clamp(_current, 0, Math.Max(0, Count - 1));
        set => _current = value;
    }

    public int Count => Groups.Sum(group => group.Cells.Count);

    public int Top { get; private set; }

    /// <summary>The lines on a screen of that size, with the current cell among them.</summary>
    public IReadOnlyList<Line> InSight(int width, int height)
    {
        LayOut(width);
        _height = height;
        var row = RowOf(Current);
        // The heading above the first row of cells is worth seeing.
        var lead = row > 0 && _rows[row - 1].IsHeading ? row - 1 : row;
        Top = Math.Clamp(Top, Math.Max(0, row - height + 1), Math.Max(0, lead));
        Top = Math.Min(Top, Math.Max(0, _rows.Count - height));

        return [.. _rows.Skip(Top).Take(height).Select(Drawn)];
    }

    /// <summary>Whether there are rows below those that were last put on the screen.</summary>
    public bool HasMoreBelow => Top + _height < _rows.Count;

    /// <summary>The cell at a place on the screen, or null.</summary>
    public int? CellAt(int column, int line)
    {
        if (Top + line >= _rows.Count || _rows[Top + line] is { IsHeading: true })
        {
            return null;
        }

        var row = _rows[Top + line];
        var within = column / _widths[row.Group];

        return within < row.Cells ? row.FirstCell + within : null;
    }

    public override bool Moves(string key, int height)
    {
        LayOut(_width);

        int? to = key switch
        {
            "Left" => Current - 1,
            "Right" => Current + 1,
            "Up" => Beside(-1),
            "Down" => Beside(1),
            "Home" => 0,
            "End" => Count - 1,
            "PageUp" => Enumerable.Range(0, Math.Max(1, height - 1)).Aggregate(Current, (at, _) => Beside(-1, at)),
            "PageDown" => Enumerable.Range(0, Math.Max(1, height - 1)).Aggregate(Current, (at, _) => Beside(1, at)),
            _ => null,
        };

        if (to is not { } cell)
        {
            return false;
        }

        Current = Math.Clamp(cell, 0, Math.Max(0, Count - 1));
        return true;
    }

    private int Beside(int step, int? from = null)
    {
        var at = from ?? Current;
        var row = RowOf(at);
        var column = row < _rows.Count ? at - _rows[row].FirstCell : 0;

        for (row += step; row >= 0 && row < _rows.Count; row += step)
        {
            if (!_rows[row].IsHeading)
            {
                return _rows[row].FirstCell + Math.Min(column, _rows[row].Cells - 1);
            }
        }

        return at;
    }

    private int RowOf(int cell)
    {
        for (var row = 0; row < _rows.Count; row++)
        {
            if (!_rows[row].IsHeading && cell < _rows[row].FirstCell + _rows[row].Cells)
            {
                return row;
            }
        }

        return Math.Max(0, _rows.Count - 1);
    }

    private void LayOut(int width)
    {
        if (ReferenceEquals(_laidOut, Groups) && _width == width)
        {
            return;
        }

        (_laidOut, _width) = (Groups, width);
        _widths = [.. Groups.Select(group => AroundLabel + group.Cells.Select(cell => TextWidth.Of(SafeText.Show(cell.Label))).DefaultIfEmpty(1).Max())];
        _starts = new int[Groups.Count];
        List<TrayRow> rows = [];
        var first = 0;

        for (var group = 0; group < Groups.Count; group++)
        {
            _starts[group] = first;
            rows.Add(new TrayRow(group, first, 0));
            var perRow = PerRow(width, _widths[group]);

            for (var at = 0; at < Groups[group].Cells.Count; at += perRow)
            {
                rows.Add(new TrayRow(group, first + at, Math.Min(perRow, Groups[group].Cells.Count - at)));
            }

            first += Groups[group].Cells.Count;
        }

        _rows = rows;
    }

    /// <summary>Tens, where ten fit: numbers are looked for by their tens.</summary>
    private static int PerRow(int width, int cell)
    {
        var fit = Math.Max(1, width / cell);

        return fit >= 10 ? fit / 10 * 10 : fit;
    }

    private Line Drawn(TrayRow row) => row.IsHeading
        ? Line.Of(Groups[row.Group].Heading, Tone.Quiet)
        : new Line([.. Enumerable.Range(row.FirstCell, row.Cells).Select(cell => Drawn(cell, Groups[row.Group].Cells[cell - _starts[row.Group]], _widths[row.Group]))]);

    private Bit Drawn(int index, TrayCell cell, int width)
    {
        var isHere = index == Current;
        var label = SafeText.Show(cell.Label);
        var pad = new string(' ', width - AroundLabel - TextWidth.Of(label));
        var text = $"{(isHere ? '›' : ' ')}{(cell.IsMarked ? '•' : ' ')}{pad}{label} {cell.Letter}{cell.Sign} ";

        return new Bit(text, isHere ? Tone.Here : cell.Tone);
    }
}
