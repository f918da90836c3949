namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>
/// What was read in an inscription or a cataloguer's words about number, size, kind of proof and state. The text as written is never
/// replaced by it; it stands beside.
/// </summary>
public sealed record EditionStatement
{
    private static readonly char[] Separators = [' ', '\t', '\r', '\n', '\u00A0', ',', ';', '|', '/', '\u2044', '\u23CE', '+', '&'];

    public required StatementKind Kind { get; init; }

    /// <summary>
    /// The kind of proof by its word: <c>edition</c>, <c>A/P</c>, <c>P/P</c>, <c>H.C.</c>, <c>B.A.T.</c>, <c>T/P</c>, <c>C.T.P.</c>, <c>W/P</c>, the
    /// words themselves for rarer ones, and a register's own kind by its mark. <see cref="SeriesKinds"/> has the register's kind for it.
    /// </summary>
    public string? Series { get; init; }

    public int? Number { get; init; }

    public int? Of { get; init; }

    public SizeHedge Hedge { get; init; }

    /// <summary>What is said of the size where no figure is: between 75 and 100. Then <see cref="Of"/> is null.</summary>
    public SizeBounds? Bounds { get; init; }

    /// <summary>A question mark stands beside the number: 3(?)/25.</summary>
    public bool NumberIsDoubted { get; init; }

    /// <summary>The number or the size is written in roman numerals.</summary>
    public bool NumberIsRoman { get; init; }

    /// <summary>The state is written in roman numerals.</summary>
    public bool StateIsRoman { get; init; }

    public bool IsRoman => NumberIsRoman || StateIsRoman;

    /// <summary>The number is a letter: the value of <see cref="Number"/> is then null.</summary>
    public string? Letter { get; init; }

    public int? State { get; init; }

    public int? StateOf { get; init; }

    /// <summary>Proofs stated beside the edition.</summary>
    public IReadOnlyList<StatedProofs> Beside { get; init; } = [];

    /// <summary>From the first that was read to the last.</summary>
    public Range Span { get; init; }

    /// <summary>What lies outside of what was read, in pieces, without the signs that part them; the whole text where nothing was read.</summary>
    public IReadOnlyList<string> Left => Remainder();

    /// <summary>Why nothing was read, for a person; null where something was.</summary>
    public string? WhyNot { get; init; }

    internal string Source { get; init; } = "";

    /// <summary>Where in the text each part stands that was read, in the order it was met.</summary>
    internal IReadOnlyList<Range> Read { get; init; } = [];

    /// <summary>In the shortest words that read as the same again; empty where nothing was read.</summary>
    public string Write() => StatementText.Write(this);

    private List<string> Remainder()
    {
        List<string> pieces = [];
        var from = 0;

        foreach (var part in Read.OrderBy(part => part.Start.Value).Append(Source.Length..Source.Length))
        {
            if (part.Start.Value > from && Trimmed(Source[from..part.Start.Value]) is { } piece)
            {
                pieces.Add(piece);
            }

            from = Math.Max(from, part.End.Value);
        }

        return pieces;
    }

    private static string? Trimmed(string piece)
    {
        var trimmed = piece.Trim(Separators).TrimEnd('(', '[', ':').TrimStart(')', ']', '.', ':').Trim(Separators);

        return trimmed.Any(char.IsLetterOrDigit) ? trimmed : null;
    }
}
