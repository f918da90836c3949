using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>What words for a paper say: its name, and where they say so its maker, weight, edges, sheet and lot. Nothing is guessed.</summary>
public sealed record ReadPaper
{
    /// <summary>With its colour, surface and way of making; null where nothing is left for a name.</summary>
    public string? Name { get; init; }

    /// <summary>Only where the text says who made it.</summary>
    public string? Maker { get; init; }

    public PaperWeight? Weight { get; init; }

    /// <summary>In the order of the text; none where nothing is said.</summary>
    public IReadOnlyList<PaperEdge> Edges { get; init; } = [];

    public string? Lot { get; init; }

    /// <summary>The sheet as it comes, in figures or by the name of a standard; never by an old name of a sheet.</summary>
    public Size? Sheet { get; init; }

    /// <summary>A name of ISO 216 where the sheet is given by it: A4.</summary>
    public string? SheetName { get; init; }

    /// <summary>Whole sentences about what was not taken: an old name of a sheet, a size without a unit.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What was not understood, as written; it stays with the text.</summary>
    public IReadOnlyList<string> Left { get; init; } = [];

    /// <summary>Where something other than the name was read, in the order of the text.</summary>
    public IReadOnlyList<Range> Spans { get; init; } = [];

    /// <summary>The same in one form: reading it again gives the same.</summary>
    public string Write() => PaperInWords.Write(this);

    /// <summary>How it was read, in a line to stand beside the field: <c>kozo, 70 g/m², deckle on four sides</c>.</summary>
    public string Explain() => PaperInWords.Explain(this);
}
