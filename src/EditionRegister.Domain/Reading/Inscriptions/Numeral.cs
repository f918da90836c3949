namespace EditionRegister.Domain.Reading.Inscriptions;

internal enum NumeralKind : byte
{
    Arabic,
    Roman,
    Word,

    /// <summary>A question mark where a number is due.</summary>
    Unknown,
}

/// <summary>A number as it stands in a text: its value, how it is written, and the token after it.</summary>
internal readonly record struct Numeral(NumeralKind Kind, int Value, int Next)
{
    public bool IsUnknown => Kind == NumeralKind.Unknown;

    public bool IsRoman => Kind == NumeralKind.Roman;

    /// <summary>The value, or null where a question mark stands for it.</summary>
    public int? Known => IsUnknown ? null : Value;
}
