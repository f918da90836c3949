using EditionRegister.Domain.Integrity;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What the rules find about one impression, each with what to do about it; what was accepted stands apart.</summary>
internal static class ImpressionFindings
{
    public static IEnumerable<Line> Lines(ImpressionWhole whole, int width)
    {
        yield return Line.Empty;
        yield return Line.Of("Findings:", Tone.Strong);

        if (whole.Open.Count == 0)
        {
            yield return Line.Of("None: nothing recorded of this sheet contradicts anything else.", Tone.Quiet);
        }

        foreach (var line in whole.Open.SelectMany(finding => Open(finding, width)).Concat(whole.Accepted.SelectMany(finding => Accepted(finding, width))))
        {
            yield return line;
        }
    }

    /// <summary>“1 contradiction, 2 queries”, or null where nothing is open.</summary>
    public static string? InShort(ImpressionWhole whole) => whole.Open.Count == 0 ? null : string.Join(", ", new[]
    {
        Of(whole, Severity.Contradiction, "contradictions"),
        Of(whole, Severity.Query, "queries"),
        Of(whole, Severity.Note, "notes"),
    }.OfType<string>());

    private static string? Of(ImpressionWhole whole, Severity severity, string many) =>
        whole.Open.Count(finding => finding.Severity == severity) is > 0 and var count ? Counted.Of(count, EditionFindings.Meaning(severity), many) : null;

    private static IEnumerable<Line> Open(Finding finding, int width) =>
        Wrap.Of($"{EditionFindings.Meaning(finding.Severity)}: {finding.Message}", width).Select(line => Line.Of(line, EditionFindings.Tone(finding.Severity)))
            .Concat(Wrap.Of($"What to do: {finding.Remedy}", width - 2).Select(line => (Line)$"  {line}"));

    private static IEnumerable<Line> Accepted(Finding finding, int width) =>
        Wrap.Of($"accepted {EditionFindings.Meaning(finding.Severity)}: {finding.Message}", width).Select(line => Line.Of(line, Tone.Quiet))
            .Concat(Wrap.Of(
                $"Accepted {finding.Accepted!.On}{(finding.Accepted.By is { } by ? $" by {by}" : "")}: {finding.Accepted.Reason}", width - 2)
                .Select(line => Line.Of($"  {line}", Tone.Quiet)));
}
