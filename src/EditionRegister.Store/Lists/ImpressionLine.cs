namespace EditionRegister.Store.Lists;

/// <summary>One impression as a list shows it. Words are as they stand in the register.</summary>
/// <param name="Id">The impression.</param>
/// <param name="Code">The eight characters as stored.</param>
/// <param name="WorkId">Its work.</param>
/// <param name="Title">The work's title, or null.</param>
/// <param name="TitleState">given, untitled or unknown.</param>
/// <param name="Makers">The makers' names, the one named first first; null where nobody is known.</param>
/// <param name="Technique">As written.</param>
/// <param name="Year">As written.</param>
/// <param name="Standing">pulled, kept, spare, left-out or held-out.</param>
/// <param name="NumberingKind">The kind of its numbering, or null.</param>
/// <param name="Notation">How that numbering writes its numbers, or null.</param>
/// <param name="Ordinal">The number given, or null.</param>
/// <param name="Pencilled">The number as it stands on the sheet.</param>
/// <param name="Size">The numbering's size, or null.</param>
/// <param name="PlaceId">Where it lies, by its last whereabouts.</param>
/// <param name="HolderId">Who has it, by its last whereabouts.</param>
/// <param name="OwnerId">Whose it is, by its last ownership.</param>
public sealed record ImpressionLine(
    long Id, string Code, long WorkId, string? Title, string TitleState, string? Makers, string? Technique, string? Year, string Standing,
    string? NumberingKind, string? Notation, long? Ordinal, string? Pencilled, long? Size, long? PlaceId, long? HolderId, long? OwnerId);
