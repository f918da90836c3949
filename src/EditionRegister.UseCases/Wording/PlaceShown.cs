using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Wording;

/// <summary>What lies in a place, as lists on the screen and on paper have it.</summary>
public static class PlaceShown
{
    private static readonly ShownColumn[] Columns = [new("code"), new("number"), new("title"), new("maker"), new("owner"), new("condition"), new("since")];

    /// <summary>One table for each place in which something lies; its heading is the way to it.</summary>
    public static IReadOnlyList<ShownTable> Tables(PlaceContents contents)
    {
        ArgumentNullException.ThrowIfNull(contents);

        return
        [
            .. contents.Parts.Where(part => part.Things.Count > 0)
                .Select(part => new ShownTable($"{part.Path} ({Counts(part.Things)}):", Columns, [.. part.Things.Select(Row)])),
        ];
    }

    /// <summary>22 sheets and 1 block or plate in 3 places, 1 of them empty.</summary>
    public static string InAll(PlaceContents contents)
    {
        ArgumentNullException.ThrowIfNull(contents);

        var empty = contents.Parts.Count(part => part.Things.Count == 0);

        return empty == contents.Parts.Count ? "Nothing lies there." : $"{Counts([.. contents.Parts.SelectMany(part => part.Things)])} in {Counted.Of(contents.Parts.Count, "place")}{(empty == 0 ? "" : $", {Counted.Figure(empty)} of them empty")}.";
    }

    /// <summary>The whole list as a document of plain text.</summary>
    /// <param name="contents">What lies there.</param>
    /// <param name="register">The register's name.</param>
    /// <param name="day">The day it was written.</param>
    public static IEnumerable<string> Document(PlaceContents contents, string register, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(contents);

        return
        [
            $"{contents.Path}: what lies there",
            $"{register}, {day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}. {InAll(contents)}",
            .. Tables(contents).SelectMany(table => (string[])["", table.Heading, .. TextLines.Of(table)]),
        ];
    }

    public static IReadOnlyList<string> CsvHeaders { get; } = ["place", "kind", "code", "title", "maker", "number", "owner", "condition", "since"];

    public static IEnumerable<IReadOnlyList<string?>> CsvRows(PlaceContents contents)
    {
        ArgumentNullException.ThrowIfNull(contents);

        return contents.Parts.SelectMany(part => part.Things.Select(thing => (string?[])
            [part.Path, thing.Kind, thing.Code, thing.Title, thing.Maker, thing.Number, thing.Owner, thing.Condition, thing.Since.Text]));
    }

    private static string Counts(IReadOnlyList<LyingThing> things)
    {
        var sheets = things.Count(thing => thing.IsSheet);
        var others = things.Count - sheets;

        return others == 0 ? Counted.Sheets(sheets) : $"{Counted.Sheets(sheets)} and {Counted.Of(others, "block or plate", "blocks or plates")}";
    }

    private static string[] Row(LyingThing thing) =>
    [
        thing.Code ?? "", thing.IsSheet ? thing.Number : thing.Number.Length > 0 ? $"{thing.Kind}, {thing.Number}" : thing.Kind, thing.Title, thing.Maker, thing.Owner, thing.Condition ?? "", thing.Since.Text ?? "",
    ];
}
