namespace EditionRegister.Tui.Pages;

/// <summary>A page of text made at once, to be read and left again.</summary>
internal sealed class TextPageOf(string title, string explains, Func<int, IReadOnlyList<Line>> text) : TextPage
{
    public override string Title => title;

    public override string Explains => explains;

    public IReadOnlyList<KeyDeed> More { get; init; } = [];

    public override IReadOnlyList<KeyDeed> Keys => [.. More, KeyDeed.Opens("Esc", "go back", () => Back.Once)];

    public override IReadOnlyList<Line> Text(int width) => text(width);
}
