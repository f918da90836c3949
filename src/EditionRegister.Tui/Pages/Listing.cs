namespace EditionRegister.Tui.Pages;

/// <summary>A column of a list.</summary>
/// <param name="Head">Its heading.</param>
/// <param name="Width">Terminal columns; a column that stretches takes at least these, and its share of what is left.</param>
/// <param name="Stretch">How large its share is of what is left over; none for 0.</param>
/// <param name="IsRight">Figures stand at the right.</param>
internal sealed record ListColumn(string Head, int Width, int Stretch = 0, bool IsRight = false);

/// <summary>Rows of a list, made only when they are looked at.</summary>
internal sealed class Listing(IReadOnlyList<ListColumn> columns, int count, Func<int, IReadOnlyList<string>> cells)
{
    public IReadOnlyList<ListColumn> Columns { get; } = columns;

    public int Count { get; } = count;

    /// <summary>True where it is not known yet how many rows there are: the last one stands for those to come.</summary>
    public bool HasMore { get; init; }

    /// <summary>Which rows are marked; none unless said.</summary>
    public Func<int, bool> IsMarked { get; init; } = _ => false;

    public Func<int, Tone> ToneOf { get; init; } = _ => Tone.Plain;

    public IReadOnlyList<string> Cells(int row) => cells(row);

    public static Listing Of<T>(IReadOnlyList<ListColumn> columns, IReadOnlyList<T> rows, Func<T, IReadOnlyList<string>> cells) =>
        new(columns, rows.Count, row => cells(rows[row]));
}
