namespace EditionRegister.Domain.Reading.Papers;

/// <summary>A kind of edge, and on how many of the four sides.</summary>
/// <param name="Kind">How it came to be.</param>
/// <param name="Sides">1 to 4, or null where it is not said.</param>
public sealed record PaperEdge(EdgeKind Kind, int? Sides)
{
    /// <summary>deckle on four sides, cut edges.</summary>
    public override string ToString() => $"{Word}{(Sides is { } sides ? $" on {CountWords[sides - 1]} {(sides == 1 ? "side" : "sides")}" : " edges")}";

    private static readonly string[] CountWords = ["one", "two", "three", "four"];

    private string Word => Kind switch { EdgeKind.Deckle => "deckle", EdgeKind.Cut => "cut", _ => "torn" };
}
