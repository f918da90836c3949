namespace EditionRegister.Domain.Works;

/// <summary>What the register read of a paper, beside the words themselves: hundredths of grams per square metre and of pounds, micrometres.</summary>
public sealed record PaperOnRecord
{
    public static PaperOnRecord None { get; } = new();

    public string? Name { get; init; }

    public string? Maker { get; init; }

    /// <summary>Hundredths of g/m².</summary>
    public long? Grammage { get; init; }

    /// <summary>Hundredths of a pound a ream of 500 sheets of the basis.</summary>
    public long? Pounds { get; init; }

    /// <summary>The sheet that the pounds are meant for, in micrometres; null where nobody said.</summary>
    public long? BasisHeight { get; init; }

    public long? BasisWidth { get; init; }

    /// <summary>The whole sheet as it comes from the maker, in micrometres.</summary>
    public long? Height { get; init; }

    public long? Width { get; init; }

    /// <summary>deckle, cut and so on, in words.</summary>
    public string? Edges { get; init; }

    public string? Lot { get; init; }
}
