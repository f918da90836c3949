using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.UseCases.Wording;

/// <summary>What reading a file in would do, or did, in the words of commands and screens.</summary>
public static class ReadInShown
{
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

    /// <summary>How many texts a preview shows of those that were read in other words.</summary>
    public const int MostTexts = 20;

    /// <summary>How many cells were read in other words, and whether all of them are shown; null where none was.</summary>
    public static string? TextsRead(ReadInReport report) => report.Texts.Cells == 0 ? null
        : $"{Counted.Of(report.Texts.Cells, "cell")} read in words and kept as written beside what was read"
            + (report.Texts.Different.Count > MostTexts ? $"; {Counted.Figure(report.Texts.Different.Count - MostTexts)} different texts more than are shown here." : ".");

    public static string Taken(ColumnMatch match) => match.Column?.Name ?? "a note, kept as written";

    public static string Because(ColumnMatch match) =>
        match.WasSaid ? "you said so"
        : match.Column is not null ? "guessed from its name"
        : ReadInColumn.Guess(match.Header) is { } guess ? $"another header is the {guess} already"
        : "no column is called so";
}
