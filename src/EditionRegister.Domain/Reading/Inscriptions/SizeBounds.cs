namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Between which figures a size lies, both included, where a text names no size: between 75 and 100, at most 40.</summary>
/// <param name="Least">Null where only the other is said.</param>
/// <param name="Most">Less than 100 is 99 at most.</param>
public readonly record struct SizeBounds(int? Least, int Most);
