using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>Finds techniques of printmaking in free text: "reduction linocut in 4 colours on Japanese paper".</summary>
public static class TechniqueReader
{
    /// <summary>Reads in one pass; nothing is refused, and what is not understood is left as written.</summary>
    /// <param name="text">As typed, or as a museum wrote it.</param>
    /// <param name="own">Techniques of the register's own, met by their word and name, before those of the list.</param>
    public static TechniqueRead Read(string? text, IReadOnlyList<Technique>? own = null) =>
        string.IsNullOrWhiteSpace(text) ? new TechniqueRead([], null, false, null, null, [])
        : new TechniqueScan(new TechniqueText(new TokenText(text), own is { Count: > 0 } ? new TechniqueTable(own, []) : null)).Read();
}
