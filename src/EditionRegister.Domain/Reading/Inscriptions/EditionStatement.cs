namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>What kind of thing a text says of a sheet's place in its edition.</summary>
public enum StatementKind
{
    /// <summary>Nothing of a number, an edition or a state was read, and nothing that could be one was passed over.</summary>
    None,

    /// <summary>A copy of the regular edition.</summary>
    Numbered,

    /// <summary>A proof, with or without a number of its own.</summary>
    Proof,

    /// <summary>A state, and nothing of the edition.</summary>
    State,

    /// <summary>How many there are, without saying which this is.</summary>
    Size,

    /// <summary>Unnumbered, unlimited, open or unique, in words.</summary>
    Open,

    /// <summary>Something that could be read in two ways, or that cannot be true (13/12); nothing is guessed.</summary>
    Declined,
}

/// <summary>How sure a text is of the size it names.</summary>
public enum SizeHedge
{
    None,

    /// <summary>At least so many.</summary>
    AtLeast,

    /// <summary>Less or no more than so many.</summary>
    AtMost,

    /// <summary>About, estimated, possibly, or with a question mark.</summary>
    About,
}

/// <summary>So many proofs of a kind stated beside an edition: plus 10 artist's proofs.</summary>
public sealed record StatedProofs(string Series, int Count);

/// <summary>
/// What was read in an inscription or a cataloguer's words about number, size, kind of proof and state. The text as written is never
/// replaced by it; it stands beside.
/// </summary>
public sealed record EditionStatement
{
    public required StatementKind Kind { get; init; }

    /// <summary>The kind of proof by its word: <c>edition</c>, <c>A/P</c>, <c>P/P</c>, <c>H.C.</c>, <c>B.A.T.</c>, <c>T/P</c>, <c>C.T.P.</c>, <c>W/P</c>, or the words themselves for rarer ones.</summary>
    public string? Series { get; init; }

    public int? Number { get; init; }

    public int? Of { get; init; }

    public SizeHedge Hedge { get; init; }

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

    /// <summary>Where in the text it was read; what lies outside is left.</summary>
    public Range Span { get; init; }

    /// <summary>Why nothing was read, for a person; null where something was.</summary>
    public string? WhyNot { get; init; }

    /// <summary>In the shortest words that read as the same again; empty where nothing was read.</summary>
    public string Write() => StatementText.Write(this);
}
