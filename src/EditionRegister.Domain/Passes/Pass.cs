using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Passes;

/// <summary>One trip through the press or under the hand. Counts are sheets, null where nobody counted.</summary>
public sealed record Pass
{
    public required long Id { get; init; }

    public required long V { get; init; }

    public required long Run { get; init; }

    /// <summary>Its place in the run, from one.</summary>
    public required int Ordinal { get; init; }

    /// <summary>printed, blind, chine-colle, hand-colouring, leaf, letterpress or other.</summary>
    public required string Kind { get; init; }

    public string? Name { get; init; }

    /// <summary>recto, verso or unknown.</summary>
    public required string Side { get; init; }

    /// <summary>all or some: whether every sheet went through.</summary>
    public required string Reach { get; init; }

    public required RecordedDate Done { get; init; }

    public int? SheetsIn { get; init; }

    public int? Added { get; init; }

    public int? SheetsOut { get; init; }

    public int? Spoiled { get; init; }

    public int? HeldOut { get; init; }

    /// <summary>Sheets of other paper used to get ready; they count in nothing.</summary>
    public int? MakeReady { get; init; }

    public string? Note { get; init; }

    public required IReadOnlyList<PassMatrix> Matrices { get; init; }

    public required IReadOnlyList<PassColour> Colours { get; init; }

    /// <summary>Who did it.</summary>
    public required IReadOnlyList<PassPerson> People { get; init; }

    /// <summary>Sheets spoiled, by fault, as far as it was noted.</summary>
    public required IReadOnlyList<PassCount> SpoiledBy { get; init; }

    /// <summary>Sheets held out as proofs, by kind of proof, as far as it was noted.</summary>
    public required IReadOnlyList<PassCount> HeldOutAs { get; init; }

    /// <summary>The sheets that went through, where only some did and it is known which.</summary>
    public required IReadOnlyList<PassSheet> Sheets { get; init; }

    public bool TakesAll => Reach != "some";
}

/// <summary>Someone who did a pass, or had a hand in it.</summary>
public sealed record PassPerson(long Id, long Person);

/// <summary>A sheet that went through a pass that not all went through.</summary>
public sealed record PassSheet(long Id, long Impression);

/// <summary>A matrix used in a pass, in which of its states.</summary>
public sealed record PassMatrix(long Id, long Matrix, long? State);

/// <summary>A colour of a pass: several make a blend, or are wiped side by side (à la poupée).</summary>
/// <param name="Id">Its row.</param>
/// <param name="Ordinal">From one.</param>
/// <param name="Colour">As written.</param>
/// <param name="Ink">Which ink, as written.</param>
/// <param name="Manner">flat, blend, a-la-poupee or unknown.</param>
public sealed record PassColour(long Id, int Ordinal, string Colour, string? Ink, string Manner);

/// <summary>So many sheets of a pass, and why: a fault, or a kind of proof.</summary>
public sealed record PassCount(long Id, string Word, int Sheets);
