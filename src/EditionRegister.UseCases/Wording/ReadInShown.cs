using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.UseCases.Wording;

/// <summary>What reading a file in would do, or did, in the words of commands and screens.</summary>
public static class ReadInShown
{
    private const int MostShown = 20;

    /// <summary>prints.csv: 24 rows of 5 works, 4 of them new.</summary>
    public static string Heading(ReadInReport report) =>
        $"{report.File}: {Counted.Of(report.Rows, "row")}{(report.WasReadBefore ? "" : $" of {Counted.Of(report.Works, "work")}, {Counted.Figure(report.NewWorks)} of them new")}.";

    /// <summary>What it comes to.</summary>
    /// <param name="report">What would be done, or was.</param>
    /// <param name="again">How it is done once problems are put right: "run this again".</param>
    /// <param name="go">A sentence that says how it is told to go.</param>
    public static string Outcome(ReadInReport report, string again, string go) =>
        report.WasReadBefore ? $"This file was read in before, as batch {Counted.Figure(report.Batch ?? 0)}; nothing was added."
        : report.Batch is { } batch ? $"Read in as batch {Counted.Figure(batch)}."
        : report.Problems.Count > 0 ? $"Nothing was read in: put the {Counted.Of(report.Problems.Count, "problem")} right and {again}."
        : $"Nothing was read in yet. {go}";

    /// <summary>12 texts were read in words:</summary>
    public static string ReadInWords(ReadInReport report) => $"{Counted.Of(report.Readings.Count, "text")} {(report.Readings.Count == 1 ? "was" : "were")} read in words:";

    /// <summary>“Épreuve d'artiste 3/10” read as artist's proof 3 of 10; twenty different ones at most, and then how many more there are.</summary>
    public static IReadOnlyList<string> Readings(ReadInReport report)
    {
        var different = Different(report);
        var more = different.Count - MostShown;

        return [.. different.Take(MostShown).Select(one => $"  {one.Read}{(one.Times > 1 ? $" ({Counted.Figure(one.Times)} times)" : "")}"), .. more > 0 ? [$"  and {Counted.Figure(more)} more."] : (string[])[]];
    }

    /// <summary>Each text once, in the order in which it was met first.</summary>
    public static IReadOnlyList<(TextRead Read, int Times)> Different(ReadInReport report)
    {
        ArgumentNullException.ThrowIfNull(report);

        return [.. report.Readings.GroupBy(one => (one.Text, one.ReadAs)).Select(same => (same.First(), same.Count()))];
    }

    public static string Taken(ColumnMatch match) => match.Column?.Name ?? "a note, kept as written";

    public static string Because(ColumnMatch match) =>
        match.WasSaid ? "you said so"
        : match.Column is not null ? "guessed from its name"
        : ReadInColumn.Guess(match.Header) is { } guess ? $"another header is the {guess} already"
        : "no column is called so";
}
