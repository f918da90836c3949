using EditionRegister.Domain.Dates;
using EditionRegister.Domain.People;

namespace EditionRegister.UseCases.Looking;

/// <summary>Everything that lies in a place and in the places inside it, place by place.</summary>
/// <param name="Place">The place.</param>
/// <param name="Path">The way to it.</param>
/// <param name="Parts">The place itself first, then those inside it by path; each with what lies in it and nowhere deeper.</param>
public sealed record PlaceContents(Place Place, string Path, IReadOnlyList<PlacePart> Parts)
{
    public int Sheets => Parts.Sum(part => part.Things.Count(thing => thing.IsSheet));

    public int Matrices => Parts.Sum(part => part.Things.Count) - Sheets;
}

/// <summary>One place with what lies in it.</summary>
public sealed record PlacePart(long Place, string Path, IReadOnlyList<LyingThing> Things);

/// <summary>A sheet, or a block or plate, as it stands on the list of a place.</summary>
/// <param name="Work">Its work.</param>
/// <param name="Kind">sheet, block, plate, stone and so on.</param>
/// <param name="Code">As people see it, or null where a block or plate has none.</param>
/// <param name="Title">Of the work.</param>
/// <param name="Maker">Of the work.</param>
/// <param name="Number">As pencilled or given; of a matrix which part it prints.</param>
/// <param name="Owner">Whose it is, for the keeper's eyes.</param>
/// <param name="Condition">The short present state, or of a matrix its fate.</param>
/// <param name="Since">When it came there.</param>
public sealed record LyingThing(long Work, string Kind, string? Code, string Title, string Maker, string Number, string Owner, string? Condition, RecordedDate Since)
{
    public bool IsSheet => Kind == "sheet";
}
