using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What a sheet came back with, and had not gone out with, is taken up.</summary>
public sealed class DamageOnTheWayIsTakenUp : IRule
{
    public string Name => nameof(DamageOnTheWayIsTakenUp);

    public string Sentence =>
        "What a sheet came back with, and had not gone out with, is taken up: it stands in the sheet's condition, or the sheet was examined again since.";

    public string Basis => "common practice, no source: the report of coming back is held against the report of going out, and damage is settled with whoever had the sheet";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        where sheet.ConditionReports is [.., { Occasion: ConditionOccasion.ComingBack }]
        let compared = ConditionComparison.Of(sheet, sheet.ConditionReports[^1])
        where compared.Out is not null
        let open = compared.New.Where(remark => !StandsIn(work, sheet.Condition, remark, compared.Back)).Select(remark => Shown(work, remark)).ToList()
        where open.Count > 0
        select this.Query(
            work.SubjectOf(sheet),
            $"{work.CalledSheet(sheet)} came back ({compared.Back.Examined}) with what it had not gone out with ({compared.Out!.Examined}): {InWords.List(open)}. Its condition says nothing of it.",
            "Settle it with whoever had the sheet, and say what its condition is from now on with `edreg inscribe --condition`, or examine it again.");

    /// <summary>By the term's name or word, or because the condition is the report's own summary.</summary>
    private static bool StandsIn(Work work, string? condition, ConditionRemark remark, ConditionReport back) =>
        condition is not null
        && (condition == back.Summary
            || condition.Contains(remark.Term, StringComparison.OrdinalIgnoreCase)
            || condition.Contains(work.OwnWords.NameOfTerm(remark.Term), StringComparison.OrdinalIgnoreCase));

    private static string Shown(Work work, ConditionRemark remark) =>
        $"{work.OwnWords.NameOfTerm(remark.Term)}{(remark.Position is { } position ? $" ({position})" : "")}";
}
