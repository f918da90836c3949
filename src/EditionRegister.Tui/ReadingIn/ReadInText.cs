using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.ReadingIn;

/// <summary>A file's preview as a text to read: what it comes to, what will be made, problems, columns, remarks.</summary>
internal static class ReadInText
{
    private const int Gap = 2;
    private const int LeastColumn = 12;

    public static string Outcome(ReadInReport report) => ReadInShown.Outcome(report, "press a to look again", "Press y to read it in, or Esc to leave it.");

    public static IReadOnlyList<Line> Of(ReadInReport report, bool isTaken, int width) =>
    [
        .. Wrap.Of(ReadInShown.Heading(report), width).Select(line => Line.Of(line, Tone.Strong)),
        .. Wrap.Of(Outcome(report), width).Select(line => Line.Of(line, report.Problems.Count > 0 ? Tone.Bad : isTaken ? Tone.Good : Tone.Plain)),
        .. report.WasReadBefore ? [] : Made(report, isTaken, width),
        .. Listed("Problems, line by line of the file", report.Problems, Tone.Bad, width),
        Line.Empty,
        Line.Of("Columns", Tone.Strong),
        .. Columns(report, width),
        .. Listed("Remarks: kept as written", report.Remarks, Tone.Warning, width),
        .. Readings(report, width),
    ];

    private static IEnumerable<Line> Made(ReadInReport report, bool isTaken, int width) =>
        Wrap.Of($"{(isTaken ? "In the register now" : report.Problems.Count > 0 ? "Would be made" : "Will be made")}: {Counted.Of(report.NewWorks, "new work")}, {Counted.Of(report.NewEditions, "new edition")}, {Counted.Sheets(report.Rows)}.", width).Select(line => (Line)line);

    private static IEnumerable<Line> Listed(string heading, IReadOnlyList<RowProblem> problems, Tone tone, int width) => problems.Count == 0 ? [] :
    [
        Line.Empty,
        Line.Of(heading, Tone.Strong),
        .. problems.SelectMany(problem => Wrap.Of(problem.ToString(), Math.Max(1, width - Gap)).Select((line, at) => Line.Of(at == 0 ? line : new string(' ', Gap) + line, tone))),
    ];

    private static IEnumerable<Line> Readings(ReadInReport report, int width) => report.Readings.Count == 0 ? [] :
    [
        Line.Empty,
        Line.Of(ReadInShown.ReadInWords(report), Tone.Strong),
        .. ReadInShown.Readings(report).SelectMany(one => Wrap.Of(one.TrimStart(), Math.Max(1, width - Gap)).Select((line, at) => (Line)(at == 0 ? line : new string(' ', Gap) + line))),
    ];

    private static IEnumerable<Line> Columns(ReadInReport report, int width)
    {
        var taken = report.Columns.Max(match => TextWidth.Of(ReadInShown.Taken(match)));
        var because = report.Columns.Max(match => TextWidth.Of(ReadInShown.Because(match)));
        var header = Math.Clamp(report.Columns.Max(match => TextWidth.Of(SafeText.Show(match.Header))), LeastColumn, Math.Max(LeastColumn, width - taken - because - (2 * Gap)));
        var space = new string(' ', Gap);

        return
        [
            Line.Of($"{TextWidth.Pad("in the file", header)}{space}{TextWidth.Pad("is taken for", taken)}{space}because", Tone.Quiet),
            .. report.Columns.Select(match => Line.Of(TextWidth.Pad(TextWidth.Cut(SafeText.Show(match.Header), header), header) + space)
                .Then(TextWidth.Pad(ReadInShown.Taken(match), taken) + space, match.Column is null ? Tone.Quiet : Tone.Plain)
                .Then(ReadInShown.Because(match), Tone.Quiet)),
        ];
    }
}
