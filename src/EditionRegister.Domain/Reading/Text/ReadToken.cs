namespace EditionRegister.Domain.Reading.Text;

internal enum TokenKind : byte
{
    Word,
    Digits,
    Sign,
}

/// <summary>A word, a run of digits or one sign of a text, with where it stands.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Apart">White space stands before it, or it is the first.</param>
internal readonly record struct ReadToken(TokenKind Kind, int Start, int Length, bool Apart)
{
    public int End => Start + Length;

    /// <summary>How many of its characters are accents that stand apart from their letter.</summary>
    public int Accents { get; init; }
}
