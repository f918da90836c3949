
namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

internal enum FractionStanding : byte
{
    /// <summary>A number and a size.</summary>
    Good,

    /// <summary>It could be something else; nothing is guessed.</summary>
    Doubtful,

    /// <summary>No sheet can be that one: 13/12, 0/12.</summary>
    Impossible,
}

/// <summary>What stands between a number and a size.</summary>
internal enum Parting : byte
{
    /// <summary>3/12.</summary>
    Tight,

    /// <summary>3 / 12.</summary>
    Spaced,

    /// <summary>3/ 12, as line breaks are written too.</summary>
    LineBreak,

    /// <summary>9-10, behind a mark.</summary>
    Dash,

    /// <summary>35 of 75.</summary>
    InWords,
}

/// <summary>A number over a size, as it stands in a text.</summary>
/// <param name="Start">The token it begins at.</param>
/// <param name="Number">The number; a question mark or nothing where it is not known.</param>
/// <param name="Parting">What stands between.</param>
/// <param name="Size">The size, with what hedges it.</param>
internal readonly record struct Fraction(int Start, Numeral Number, Parting Parting, SizeFigure Size)
{
    public int Next => Size.Next;

    /// <summary>A question mark beside the number itself: 3(?)/25.</summary>
    public bool IsNumberDoubted { get; init; }

    public bool IsRoman => Number.IsRoman || Size.IsRoman;

    /// <summary>Both are plain figures, as dates and measures are.</summary>
    public bool IsPlain => Number.Kind == NumeralKind.Arabic && Size is { Of: not null, IsRoman: false, Hedge: SizeHedge.None } && !IsNumberDoubted;

    /// <summary>A part of an inch as people measure: 5/8, never 4/8 or 3/25.</summary>
    public bool IsRulersPart => IsPlain && Units.IsRulersPart(Number.Value, Size.Of);

    public bool IsImpossible => Size.Of < 1 || (!Number.IsUnknown && (Number.Value < 1 || Number.Value > Size.Of));
}
