using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Lines of the chest as rows of a list, each made only when it is drawn.</summary>
internal static class ChestRows
{
    private static readonly ListColumn[] Columns =
    [
        new("title", 20, Stretch: 3), new("maker", 13, Stretch: 2), new("year", 5), new("edition", 14, Stretch: 2),
        new("here", 4, IsRight: true), new("away", 4, IsRight: true), new("sold", 4, IsRight: true),
    ];

    /// <param name="found">The lines.</param>
    /// <param name="areCounted">Whether it is known yet where the sheets are.</param>
    public static Listing Of(IReadOnlyList<ChestLine> found, bool areCounted) => Listing.Of(Columns, found, line => Cells(line, areCounted));

    /// <summary>The whole of a line in words: what a column had no room for.</summary>
    public static IEnumerable<Line> InWords(ChestLine line, bool areCounted, int width)
    {
        var which = line.Edition is { } id ? $"Edition {Counted.Figure(id)}: {Title(line)}" : Title(line);
        string[] of = [line.Makers, .. Given(line.Year), .. Given(line.Technique)];
        var said = line.Edition is null ? "No edition is declared yet" : $"{(line.Numberings == line.Kind ? "" : $"{line.Numberings}: ")}{Kind(line)}{Closed(line)}";

        return
        [
            .. Wrap.Of($"{which}, {string.Join(", ", of)}", width).Take(2).Select(text => (Line)text),
            .. Wrap.Of($"{said}. {(areCounted ? Sheets(line) : "")}", width).Take(2).Select(text => Line.Of(text, Tone.Quiet)),
        ];
    }

    private static string[] Cells(ChestLine line, bool areCounted) =>
    [
        line.Title, line.Makers, line.Year ?? "", line.Edition is null ? "not declared" : line.Numberings,
        Count(line.Here, areCounted), Count(line.Away, areCounted), Count(line.Sold, areCounted),
    ];

    // What stands for a title is no title and goes without quotation marks, as everywhere.
    private static string Title(ChestLine line) => line.Title is "Untitled" or "[unknown]" ? line.Title : $"“{line.Title}”";

    private static string Count(int sheets, bool isKnown) => isKnown ? Counted.Figure(sheets) : "…";

    private static string Kind(ChestLine line) => $"{(line.Kind == "unknown" ? "of a kind not known" : Called.Plain(line.Kind))}, {Called.Extent(line.Extent)}";

    private static string Closed(ChestLine line) => line.Closed switch { "yes" => ", closed", "unknown" when line.Extent == "whole" => ", closed or not is not known", _ => "" };

    private static string Sheets(ChestLine line)
    {
        var elsewhere = line.Sheets - line.Here - line.Away - line.Sold;
        string[] parts =
        [
            .. Part(line.Here, "here"), .. Part(line.Away, "away"), .. Part(line.Sold, "sold or given away"), .. Part(elsewhere, "gone or not known where"),
        ];

        return line.Sheets == 0 ? line.Edition is null ? "No sheets yet." : "No numbered sheets yet."
            : $"{Counted.Of(line.Sheets, line.Edition is null ? "sheet" : "numbered sheet")}: {string.Join(", ", parts)}.";
    }

    private static IEnumerable<string> Part(int count, string words) => count == 0 ? [] : [$"{Counted.Figure(count)} {words}"];

    private static IEnumerable<string> Given(string? text) => string.IsNullOrWhiteSpace(text) ? [] : [text];
}
