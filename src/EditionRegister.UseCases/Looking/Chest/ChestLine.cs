namespace EditionRegister.UseCases.Looking;

/// <summary>
/// One line of the plan chest: an edition, or a work of which none is declared yet. The counts are of an edition's numbered sheets, or of all the sheets
/// of a work without edition; they are 0 until the chest's sheets are read. Each sheet counts as sold, here or away, or as none of them where nobody
/// knows where it is or it is gone for good.
/// </summary>
/// <param name="Edition">The edition, or null for a work without one.</param>
/// <param name="Work">The work.</param>
/// <param name="EditionOrdinal">Which edition of its work it is, from one; 0 for a work without one.</param>
/// <param name="Title">As lists show it: as given, Untitled, or [unknown].</param>
/// <param name="Makers">As lists show them, first named first; [unknown] where nobody knows.</param>
/// <param name="Year">As written.</param>
/// <param name="Technique">As written.</param>
/// <param name="Kind">limited, open, varied, unique or unknown; empty for a work without edition.</param>
/// <param name="Extent">whole, partly-known or someone-elses; empty for a work without edition.</param>
/// <param name="Closed">yes, no or unknown; empty for a work without edition.</param>
/// <param name="Numberings">In short: "12 + 2 A/P"; empty for a work without edition.</param>
/// <param name="Sheets">How many sheets.</param>
/// <param name="Here">Not sold, and in a place of ours or in the maker's or the keeper's hands.</param>
/// <param name="Away">Not sold, and with somebody else, or in a place somebody else keeps.</param>
/// <param name="Sold">Sold, given or otherwise passed on, wherever they are.</param>
public sealed record ChestLine(
    long? Edition, long Work, int EditionOrdinal, string Title, string Makers, string? Year, string? Technique, string Kind, string Extent, string Closed,
    string Numberings, int Sheets, int Here, int Away, int Sold);
