using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>The lines below the tray: the current cell in words, the letters and signs that occur, and what the edition comes to.</summary>
internal static class EditionFoot
{
    public static IReadOnlyList<Line> Of(EditionSeen seen, EditionTray tray, TraySlot? here, int width) =>
    [
        Line.Of(new string('─', width), Tone.Quiet),
        .. here is null ? [] : Cell(seen, here, width),
        .. Wrapped(Legend(seen, tray), width),
        .. EditionTotalsShown.Of(seen.Map.Totals, width),
    ];

    private static IEnumerable<Line> Cell(EditionSeen seen, TraySlot slot, int width)
    {
        string?[] facts = slot.Cell.Sheet is { } sheet
            ? [sheet.ShownCode, seen.Work.EditionOf(sheet) is null ? null : Called.Plain(sheet.Standing), Signed(sheet.Signed), PricesShown.Show(sheet.Asking, sheet.AskingCurrency) is { } price ? $"asking {price}" : null, sheet.ValidCertificate is null ? null : "certified"]
            : [slot.Cell.Where, Story(slot)];
        yield return Cut(Line.Of(slot.Cell.Spelled, Tone.Strong).Then("  " + string.Join(" · ", facts.Where(fact => !string.IsNullOrEmpty(fact)))), width);

        if (slot.Cell.Sheet is { } there)
        {
            yield return Cut($"{slot.Cell.Where}{Whose(seen, slot, there)}", width);

            if (there.Variant is { } variant)
            {
                yield return Cut($"This one: {variant}", width);
            }

            if (InSet(seen, there) is { } set)
            {
                yield return Cut(set, width);
            }
        }

        foreach (var line in slot.Findings.OrderByDescending(finding => finding.Severity).Take(1).SelectMany(finding => EditionHead.Said(finding, slot.Findings.Count - 1, width)))
        {
            yield return line;
        }
    }

    // Where somebody else owns the sheet the map says so already.
    private static string Whose(EditionSeen seen, TraySlot slot, Impression sheet) =>
        sheet.Whose is { State: "known" } && !slot.Cell.Where.Contains("belongs to", StringComparison.Ordinal) ? $" · belongs to {WhereInWords.OwnerOf(seen.Work, sheet)}" : "";

    /// <summary>Of a copy of a set what lies in it, of a sheet in a copy which; null of all others.</summary>
    private static string? InSet(EditionSeen seen, Impression sheet) =>
        seen.Work.Set is { } set ? $"In it: {string.Join("; ", set.Parts.Select(part => $"{part.Title} {UseCases.Looking.SetSeen.In(sheet, part)?.Number ?? "–"}"))}"
        : SetsSaid.LiesIn(sheet) is { } lies ? $"In {lies}"
        : null;

    private static string Signed(string signed) => signed switch { "yes" => "signed", "no" => "not signed", _ => "signed or not is not known" };

    private static string? Story(TraySlot slot) => slot.Numbering?.Numbers.FirstOrDefault(number => number.Ordinal == slot.Cell.Ordinal)?.Note;

    private static Line Cut(Line line, int width)
    {
        var first = line.Bits[0];
        var rest = string.Concat(line.Bits.Skip(1).Select(bit => SafeText.Show(bit.Text)));
        var shown = TextWidth.Cut(SafeText.Show(first.Text), width);

        return Line.Of(shown, first.Tone).Then(TextWidth.Cut(rest, width - TextWidth.Of(shown)));
    }

    private static IEnumerable<(string Sign, string Meaning)> Legend(EditionSeen seen, EditionTray tray) =>
    [
        .. seen.Map.Legend.Select(letter => ($"{letter.Letter}", letter.Meaning)),
        .. tray.Slots.SelectMany(slot => slot.Findings).Concat(seen.Map.Numberings.SelectMany(numbering => seen.Of(numbering.Numbering)))
            .Select(finding => finding.Severity).Distinct().OrderDescending()
            .Select(severity => ($"{EditionFindings.Sign(severity)}", EditionFindings.Meaning(severity))),
    ];

    /// <summary>As many to a line as fit; a letter is never parted from its meaning.</summary>
    private static IEnumerable<Line> Wrapped(IEnumerable<(string Sign, string Meaning)> legend, int width)
    {
        var line = Line.Empty;

        foreach (var (sign, meaning) in legend)
        {
            if (line.Bits.Count > 0 && line.Width + 3 + sign.Length + 1 + meaning.Length > width)
            {
                yield return line;
                line = Line.Empty;
            }

            line = line.Then(line.Bits.Count > 0 ? "   " : "").Then(sign, Tone.Key).Then($" {meaning}", Tone.Quiet);
        }

        if (line.Bits.Count > 0)
        {
            yield return line;
        }
    }
}
