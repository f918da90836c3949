namespace EditionRegister.Domain.Documents;

/// <summary>Millimetres from the top left corner of the paper.</summary>
public readonly record struct Box(double X, double Y, double Width, double Height);

/// <summary>What one printer gets wrong, in millimetres. Kept with the printer, never in the sheet.</summary>
public readonly record struct PrinterOffset(double Right, double Down)
{
    /// <summary>Millimetres either way; what is further out is no label printer's fault.</summary>
    public const double Most = 20;
}

/// <summary>The geometry of a sheet of labels, as printed on its packet. All lengths in millimetres.</summary>
public sealed record LabelSheet
{
    /// <summary>What a person types to choose it.</summary>
    public required string Name { get; init; }

    public required double PaperWidth { get; init; }

    public required double PaperHeight { get; init; }

    public required int Columns { get; init; }

    public required int Rows { get; init; }

    public required double Left { get; init; }

    public required double Top { get; init; }

    public required double LabelWidth { get; init; }

    public required double LabelHeight { get; init; }

    public required double PitchX { get; init; }

    public required double PitchY { get; init; }

    public int PerSheet => Columns * Rows;

    /// <summary>
    /// Where each label goes, sheet by sheet from 0. Only the first sheet starts at <paramref name="firstPosition"/>,
    /// counted from one, so that a half-used sheet can go back into the printer.
    /// </summary>
    public IEnumerable<(int Sheet, Box Box)> Place(int labels, int firstPosition = 1, PrinterOffset offset = default)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(labels);
        ArgumentOutOfRangeException.ThrowIfLessThan(firstPosition, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(firstPosition, PerSheet);

        return from label in Enumerable.Range(firstPosition - 1, labels)
               let slot = label % PerSheet
               select (label / PerSheet, new Box(
                   Left + (slot % Columns * PitchX) + offset.Right,
                   Top + (slot / Columns * PitchY) + offset.Down,
                   LabelWidth,
                   LabelHeight));
    }
}
