namespace EditionRegister.Domain.Documents;

/// <summary>A sheet of office paper, in millimetres, upright.</summary>
public sealed record PageSize
{
    private PageSize(string word, double width, double height) => (Word, Width, Height) = (word, width, height);

    /// <summary>210 × 297 mm, ISO 216.</summary>
    public static PageSize A4 { get; } = new("A4", 210, 297);

    /// <summary>8.5 × 11 in.</summary>
    public static PageSize Letter { get; } = new("Letter", 215.9, 279.4);

    public static IReadOnlyList<PageSize> All { get; } = [A4, Letter];

    public string Word { get; }

    public double Width { get; }

    public double Height { get; }

    public static PageSize? Of(string? word) =>
        All.FirstOrDefault(page => string.Equals(page.Word, word, StringComparison.OrdinalIgnoreCase));

    public override string ToString() => Word;
}
