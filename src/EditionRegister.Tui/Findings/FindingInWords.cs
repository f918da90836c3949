using EditionRegister.Domain.Integrity;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Findings;

/// <summary>A finding as lines: how grave, what is so, what to do, on what it rests, and that it was accepted.</summary>
internal static class FindingInWords
{
    private const int Label = 10;

    public static string Sign(Severity severity) => severity switch
    {
        Severity.Contradiction => "! contradiction",
        Severity.Query => "? query",
        _ => "· note",
    };

    public static Tone ToneOf(Severity severity) => severity switch
    {
        Severity.Contradiction => Tone.Bad,
        Severity.Query => Tone.Warning,
        _ => Tone.Plain,
    };

    public static IReadOnlyList<Line> Of(Finding finding, int width) =>
    [
        Line.Of(Sign(finding.Severity), ToneOf(finding.Severity)).Then($"  {finding.Subject}", Tone.Strong),
        .. Wrap.Of(finding.Message, width).Select(line => (Line)line),
        .. Told("To do", finding.Remedy, width),
        .. finding.Accepted is { } accepted ? Told("Accepted", $"{accepted.On}{(accepted.By is { } by ? $", {by}" : "")}: {accepted.Reason}", width) : [],
        .. Told("Rests on", finding.Basis, width),
        .. Told("Rule", finding.Rule + (finding.Handle is { } handle ? $", called {handle} by `edreg check`" : ", about the file itself"), width),
    ];

    private static IEnumerable<Line> Told(string label, string text, int width) =>
        Wrap.Of(text, Math.Max(20, width - Label)).Select((line, at) => Line.Fact(at == 0 ? label : "", line, Label));
}
