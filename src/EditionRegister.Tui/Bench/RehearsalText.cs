using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Editions;

namespace EditionRegister.Tui.Bench;

/// <summary>A rehearsed declaration as lines to read.</summary>
internal static class RehearsalText
{
    private const int LabelColumns = 22;

    public static IReadOnlyList<Line> Of(DeclarationRehearsed rehearsed, int width)
    {
        var rehearsal = rehearsed.Rehearsal;

        return
        [
            .. Section("Look at this first", Wanting(rehearsal), width, Tone.Warning),
            .. Section("What a certificate will say", rehearsed.Sentences, width),
            Line.Of("What will be pencilled", Tone.Strong),
            .. Pencil(rehearsal, width),
            Line.Empty,
            .. Section("What it comes to", Totals(rehearsal), width),
        ];
    }

    private static IReadOnlyList<Line> Section(string heading, IEnumerable<(string Label, string Value)> facts, int width, Tone tone = Tone.Strong)
    {
        List<Line> lines = [.. facts.SelectMany(fact => Fact(fact.Label, fact.Value, width))];

        return lines.Count == 0 ? [] : [Line.Of(heading, tone), .. lines, Line.Empty];
    }

    private static IEnumerable<(string Label, string Value)> Totals(Rehearsal rehearsal)
    {
        var totals = rehearsal.Totals;

        yield return ("In the edition", totals.Size is { } size ? $"{Counted.Figure(size)}: {totals.SizeSpan}" : totals.SizeSpan.Length > 0 ? totals.SizeSpan : "none");

        foreach (var kind in totals.Proofs.Concat(totals.SheetsPulled))
        {
            yield return (kind.Kind.PluralName, $"{(kind.Count is { } count ? Counted.Figure(count) : "not known")}: {kind.Span}{(kind.Kind.InTotal ? "" : ", not in the total")}");
        }

        yield return ("In all", totals.Total is { } total ? Counted.Of(total, "impression") : "not known");
        yield return ("Spare, left out", $"{Counted.Figure(totals.Spare)}, {Counted.Figure(totals.LeftOut)}");
    }

    private static IEnumerable<(string Label, string Value)> Wanting(Rehearsal rehearsal)
    {
        if (!rehearsal.Edition.Numberings.Any(numbering => numbering.Kind is { InSize: true }))
        {
            yield return ("Proofs only", "the edition itself, such as 1-12, is not among them");
        }

        foreach (var without in rehearsal.WithoutSheet)
        {
            yield return ("Without a sheet", $"{Counted.Of(without.Count, "number")} of {without.Numbering.Span}: {(without.Count == 1 ? "it stays" : "they stay")} open until {(without.Count == 1 ? "it is" : "they are")} printed, or said to be never printed");
        }

        if (rehearsal.KeptWithout.Count > 0)
        {
            yield return ("Without a number", $"{Counted.Of(rehearsal.KeptWithout.Count, "kept sheet")}: {string.Join(", ", rehearsal.KeptWithout.Select(sheet => sheet.ShownCode))}");
        }
    }

    private static IEnumerable<Line> Pencil(Rehearsal rehearsal, int width) => rehearsal.Sheets.Count == 0
        ? [Line.Of("No kept sheet is there to be numbered yet.", Tone.Quiet)]
        : rehearsal.Sheets.GroupBy(sheet => sheet.Numbering).SelectMany(same => same
            .Select(sheet => PencilDrawn.Across(sheet.Pencil, width))
            .Prepend(Line.Of(same.Key.Kind?.Name ?? same.Key.KindWord, Tone.Quiet)));

    private static IEnumerable<Line> Fact(string label, string value, int width) =>
        Wrap.Of(value, Math.Max(10, width - LabelColumns)).Select((line, at) => Line.Fact(at == 0 ? label : "", line, LabelColumns));
}
