using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>The lines above the tray: which edition, whose, of what kind; what was found that belongs to no cell; how many sheets are marked.</summary>
internal static class EditionHead
{
    public static IReadOnlyList<Line> Of(EditionSeen seen, string marked, int width) =>
    [
        Heading(EditionSaid.MapHeading(seen.Map), marked, width),
        Line.Of(TextWidth.Cut(SafeText.Show(About(seen)), width), Tone.Quiet),
        .. Found(seen, width),
    ];

    private static Line Heading(string heading, string marked, int width)
    {
        var left = Math.Max(1, width - (marked.Length > 0 ? marked.Length + 2 : 0));
        var shown = TextWidth.Cut(SafeText.Show(heading), left);

        return marked.Length == 0 ? Line.Of(shown, Tone.Strong) : Line.Of(TextWidth.Pad(shown, left), Tone.Strong).Then("  " + marked, Tone.Warning);
    }

    private static string About(EditionSeen seen)
    {
        var (work, edition) = (seen.Work, seen.Edition);
        string?[] parts =
        [
            $"{(edition.Kind == "unknown" ? "kind not known" : Called.Plain(edition.Kind))}, {Called.Extent(edition.Extent)}",
            edition.Declared.IsKnown ? $"declared {edition.Declared}" : null,
            edition.IsClosed ? $"closed {(edition.ClosedOn.IsKnown ? edition.ClosedOn : "")}".TrimEnd() : edition.Closed == "no" && edition.IsOurs ? "not closed" : null,
            RankText.Of(edition),
            edition.Printing == "on-demand" ? "on demand" : null,
            edition.FellShort is not null ? "short edition" : null,
            edition.Intended is { } intended && intended != edition.Size ? $"{Counted.Figure(intended)} intended" : null,
            work.ShownMaker,
            work.Year.IsKnown ? work.Year.Text : null,
            work.Technique,
            edition.Note,
        ];

        return string.Join(" · ", parts.Where(part => !string.IsNullOrWhiteSpace(part)));
    }

    /// <summary>The gravest of what has no cell of its own, and how many there are.</summary>
    private static IEnumerable<Line> Found(EditionSeen seen, int width)
    {
        var found = seen.Map.Numberings.SelectMany(numbering => seen.Of(numbering.Numbering)).Concat(seen.Besides).OrderByDescending(finding => finding.Severity).ToList();

        return found.Count == 0 ? [] : Said(found[0], found.Count - 1, width);
    }

    public static IEnumerable<Line> Said(Finding finding, int more, int width)
    {
        var sentence = $"{EditionFindings.Sign(finding.Severity)} {finding.Message}{(more > 0 ? $" And {Counted.Of(more, "more finding")}: press 4." : "")}";

        return Wrap.Of(sentence, width).Take(2).Select(line => Line.Of(line, EditionFindings.Tone(finding.Severity)));
    }
}
