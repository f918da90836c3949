namespace EditionRegister.Domain.Editions;

/// <summary>The letters of the number map. Each says one thing, told in the legend.</summary>
internal static class NumberMapLetters
{
    public const char Here = 'h';
    public const char Away = 'a';
    public const char Sold = 's';
    public const char WithOwner = 'c';
    public const char Gone = 'x';
    public const char Open = 'o';
    public const char NeverPrinted = 'n';
    public const char Void = 'v';
    public const char Elsewhere = 'e';
    public const char Unknown = '?';

    private static readonly MapLetter[] All =
    [
        new(Here, "here"),
        new(Away, "away, with someone"),
        new(Sold, "sold, not yet with its owner"),
        new(WithOwner, "with its owner"),
        new(Gone, "gone for good"),
        new(Open, "open, no sheet yet"),
        new(NeverPrinted, "never printed"),
        new(Void, "void"),
        new(Elsewhere, "elsewhere, not in this register"),
        new(Unknown, "not known"),
    ];

    public static IReadOnlyList<MapLetter> Legend(IEnumerable<MapCell> cells)
    {
        var met = cells.Select(cell => cell.Letter).ToHashSet();

        return [.. All.Where(letter => met.Contains(letter.Letter))];
    }

    public static (char Letter, string Words) OfFate(string? fate) => fate switch
    {
        "open" => (Open, "open"),
        "never-printed" => (NeverPrinted, "never printed"),
        "void" => (Void, "void"),
        "elsewhere" => (Elsewhere, "elsewhere"),
        _ => (Unknown, "not known"),
    };
}
