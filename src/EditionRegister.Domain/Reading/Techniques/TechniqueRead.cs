using System.Globalization;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>
/// What was read in the words for a technique. To be kept are the words of the techniques in their order, the counts and the support;
/// the text itself stays as written beside them.
/// </summary>
/// <param name="Techniques">In the order of the text, each once. None where no word of printmaking was met.</param>
/// <param name="Colours">How many colours the text says, or null.</param>
/// <param name="InColour">Colour is said without a number, and no technique of the list says it in its own word.</param>
/// <param name="Matrices">From how many blocks, plates, stones or screens, or null.</param>
/// <param name="Support">What it is printed on, as written without its "on", or null.</param>
/// <param name="Left">What was not understood, as written, phrase by phrase.</param>
public sealed record TechniqueRead(IReadOnlyList<Technique> Techniques, int? Colours, bool InColour, MatrixCount? Matrices, string? Support, IReadOnlyList<string> Left)
{
    private const int MostQuoted = 6;

    /// <summary>How it was read, to stand beside the field: "reduction linocut; 4 colours; on Japanese paper".</summary>
    public string InWords() => string.Join("; ", new[]
    {
        Techniques.Count == 0 ? "no technique of the list" : string.Join(", ", Techniques.Select(technique => technique.Name)),
        Colours is { } count ? string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "colour" : "colours")}") : InColour ? "in colour" : "",
        Matrices is { } matrices ? $"from {matrices}" : "",
        Support is null ? "" : $"on {Support}",
    }.Where(part => part.Length > 0));

    /// <summary>What was left, and which technique may be meant by it; null where nothing was.</summary>
    public string? NotKnown() => Left.Count == 0 ? null
        : $"not known to the list: {string.Join(", ", Left.Take(MostQuoted).Select(Quoted))}{(Left.Count > MostQuoted ? string.Create(CultureInfo.InvariantCulture, $" and {Left.Count - MostQuoted} more") : "")}";

    private static string Quoted(string phrase) => NearlyWritten.Of(phrase) is { } meant ? $"“{phrase}” (is {meant.Name} meant?)" : $"“{phrase}”";
}
