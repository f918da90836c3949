namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>What a size is said to be of: the parts of the closed list in it, and the words as written, in small letters.</summary>
/// <param name="Parts">None where only other words stand.</param>
/// <param name="Words">As written.</param>
/// <param name="Start">Its first token.</param>
/// <param name="Next">The token after it.</param>
internal sealed record PartName(IReadOnlyList<SizePart> Parts, string Words, int Start, int Next);
