using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Conditions;

/// <summary>Why a condition cannot be reported so.</summary>
public static class ConditionRefusals
{
    public static RefusedException OccasionUnknown(string occasion) =>
        new("condition-occasion-unknown", $"“{occasion}” is no occasion for a condition report. Nothing was changed. The occasions are {string.Join(", ", ConditionOccasion.All)}.");

    public static RefusedException NothingSaid() =>
        new("condition-not-said", "A condition report says something: what is the matter, or that nothing is. Nothing was changed. Give --remark for each thing seen, or --summary, as in “no fault seen”.");

    public static RefusedException RemarkMisread(string text) =>
        new("remark-misread", $"“{text}” is no remark: it begins with a term, then where on the sheet after @, then a note after a colon, as in “dented-corner@lower left: 3 mm”. Nothing was changed. `edreg condition terms` shows the terms.");

    public static RefusedException TermUnknown(string word, IReadOnlyList<ConditionTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(terms);

        var near = terms.Where(term => term.Word.Contains(word, StringComparison.Ordinal) || word.Contains(term.Word, StringComparison.Ordinal)).Select(term => term.Word).ToList();
        var meant = near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}? " : "";

        return new("condition-term-unknown", $"“{word}” is no term this register knows. Nothing was changed. {meant}`edreg condition terms` shows all with their meanings; one of your own is added with `edreg condition term add`; “other” with a note says anything.");
    }

    public static RefusedException NoSuchPicture(long picture, Work work) =>
        new("picture-not-of-work", string.Create(CultureInfo.InvariantCulture, $"“{work?.ShownTitle}” has no picture {picture}. Nothing was changed. Add the picture to the work first, or leave # and its number out of the remark."));

    public static RefusedException BeforePrinted(Impression sheet, RecordedDate examined, RecordedDate printed) =>
        new("examined-before-printed", $"{sheet.ShownCode} was printed {printed}, after {examined}. Nothing was changed. Correct the date.");

    public static RefusedException BeforeLastReport(Impression sheet, RecordedDate examined, RecordedDate last) =>
        new("examined-before-last", $"{sheet.ShownCode} was last examined {last}, after {examined}, and reports run forwards. Nothing was changed. Correct the date.");

    public static RefusedException TermKnownAlready(string word) =>
        new("condition-term-known", $"“{word}” is a term of this register already. Nothing was changed. `edreg condition terms` shows it.");

    public static RefusedException TermMisformed(string word) =>
        new("condition-term-misformed", $"“{word}” is no word for a term. Nothing was changed. Use small letters a to z, figures and hyphens, as in “frame-rub”; its name may have any letters.");

    public static RefusedException NoReport(Impression sheet) =>
        new("no-condition-report", $"{sheet.ShownCode} has no condition report. Nothing was changed. Write one with `edreg condition add`.");

    public static RefusedException NoSuchReport(Impression sheet, int ordinal) =>
        new("condition-report-not-found", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} has no condition report {ordinal}: it has {sheet.ConditionReports.Count}. Nothing was changed. `edreg condition show {sheet.ShownCode}` shows them."));
}
