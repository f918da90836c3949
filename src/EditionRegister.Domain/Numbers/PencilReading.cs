namespace EditionRegister.Domain.Numbers;

/// <summary>What came of reading a pencilled number: nothing is ever guessed, and why it was not read is said.</summary>
public enum PencilReading
{
    Read,

    Empty,

    /// <summary>Not a number alone: words, a date, quotes or a question mark stand around it, or it is something else.</summary>
    NotPlain,

    /// <summary>Plain, but impossible: 13/12, 0/12, or larger than any edition.</summary>
    OutOfRange,
}
