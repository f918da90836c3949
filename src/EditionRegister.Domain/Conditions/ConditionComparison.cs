using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Conditions;

/// <summary>How a sheet came back against how it went out.</summary>
/// <param name="Out">The report when it went, or null where there is none.</param>
/// <param name="Back">The report when it came back.</param>
/// <param name="New">Remarks it came back with and had not gone out with; all of them where nobody looked before.</param>
/// <param name="Same">Remarks that both have.</param>
public sealed record ConditionComparison(ConditionReport? Out, ConditionReport Back, IReadOnlyList<ConditionRemark> New, IReadOnlyList<ConditionRemark> Same)
{
    /// <summary>Of the last time it came back; null where it never did.</summary>
    public static ConditionComparison? LastOf(Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);

        return sheet.ConditionReports.LastOrDefault(report => report.Occasion == ConditionOccasion.ComingBack) is { } back ? Of(sheet, back) : null;
    }

    /// <summary>A report of coming back against the newest before it that was made when the sheet went out.</summary>
    public static ConditionComparison Of(Impression sheet, ConditionReport back)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(back);

        var before = sheet.ConditionReports.TakeWhile(report => report.Ordinal < back.Ordinal).ToList();
        var lastBack = before.FindLastIndex(report => report.Occasion == ConditionOccasion.ComingBack);
        var wentOut = before.Skip(lastBack + 1).LastOrDefault(report => report.Occasion == ConditionOccasion.GoingOut);
        var same = back.Remarks.Where(remark => wentOut?.Remarks.Any(known => IsSame(known, remark)) == true).ToList();

        return new ConditionComparison(wentOut, back, [.. back.Remarks.Except(same)], same);
    }

    /// <summary>One word in one place. Where one of them names no place it may be the same, and is taken to be.</summary>
    private static bool IsSame(ConditionRemark one, ConditionRemark other) =>
        one.Term == other.Term && (one.Position is null || other.Position is null || SearchText.Fold(one.Position) == SearchText.Fold(other.Position));
}
