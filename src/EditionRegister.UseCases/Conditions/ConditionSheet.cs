using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Conditions;

/// <summary>A condition report as a paper to sign: what the sheet is, what was seen, and room for two signatures.</summary>
public static class ConditionSheet
{
    private const string Rule = "________________________________";

    /// <param name="work">The work.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="report">Which report.</param>
    /// <param name="register">The register's name.</param>
    /// <param name="sizes">How sizes are written.</param>
    public static IReadOnlyList<string> Lines(Work work, Impression sheet, ConditionReport report, string register, SizeStyle sizes)
    {
        var run = ImpressionFacts.OfTheRun(work, sheet, sizes).Where(fact => fact.Label is "Paper" or "Image" or "Sheet");
        List<string> lines =
        [
            $"Condition report, {Called.Plain(report.Occasion)}",
            register,
            "",
            .. Facts([("Sheet", $"{Called.Work(work)}, {work.NumberOf(sheet)}"), ("Code", sheet.ShownCode), ("Maker", work.ShownMaker), ("Technique", work.Technique), .. run]),
            "",
            .. Facts(ConditionShown.Facts(work, report)),
            "",
        ];
        var remarks = ConditionShown.Remarks(work, report);
        lines.AddRange(remarks.Rows.Count == 0 ? ["Nothing was remarked."] : [remarks.Heading, .. TextLines.Of(remarks)]);

        if (ConditionShown.Compared(work, sheet, report) is { } compared)
        {
            lines.AddRange(["", compared]);
        }

        lines.AddRange(["", .. ConditionSaid.Cares(report.Remarks.Select(remark => remark.Term)), ConditionSaid.Caution, "", .. Signatures(report)]);

        return lines;
    }

    private static IEnumerable<string> Signatures(ConditionReport report)
    {
        var (gives, takes) = report.Occasion switch
        {
            ConditionOccasion.GoingOut => ("Handed over by", "Received by"),
            ConditionOccasion.ComingBack => ("Brought back by", "Received by"),
            _ => ("Examined by", "Seen by"),
        };

        return ["", $"{gives,-15} {Rule}  date ____________", "", "", $"{takes,-15} {Rule}  date ____________"];
    }

    private static IEnumerable<string> Facts(IEnumerable<(string Label, string? Value)> facts)
    {
        var known = facts.Where(fact => fact.Value is not null).ToList();
        var width = known.Max(fact => fact.Label.Length);

        return known.Select(fact => $"{fact.Label.PadRight(width)}  {fact.Value}");
    }
}
