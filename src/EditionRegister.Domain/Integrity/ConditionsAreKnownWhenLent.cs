using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Before a sheet goes out on loan somebody writes down how it is.</summary>
public sealed class ConditionsAreKnownWhenLent : IRule
{
    public string Name => nameof(ConditionsAreKnownWhenLent);

    public string Sentence => "A sheet that is out on loan was examined when it went, so that damage done there can be told from damage it had before.";

    public string Basis => "common practice, no source: a loan begins and ends with a condition report that both sides sign";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        where sheet.Whereabouts is [.., { Kind: "lent" }] && !WasExamined(sheet)
        select this.Note(
            work.SubjectOf(sheet),
            $"{work.CalledSheet(sheet)} was lent to {work.Book.NameOf(sheet.Where?.Holder)} ({sheet.Whereabouts[^1].Moved}), and no report says how it was when it went.",
            $"Write down now what is known of it with `edreg condition add --sheets {sheet.ShownCode} --occasion going-out`, and ask the borrower to look too.");

    /// <summary>A report of going out that can belong to this loan: not surely written before the sheet came home from the one before, nor surely after it went.</summary>
    private static bool WasExamined(Impression sheet)
    {
        var lent = sheet.Whereabouts[^1];
        var home = sheet.Whereabouts.Count > 1 ? sheet.Whereabouts[^2].Moved : Dates.RecordedDate.None;

        return sheet.ConditionReports.Any(report =>
            report.Occasion == ConditionOccasion.GoingOut && !report.Examined.SurelyBefore(home) && !lent.Moved.SurelyBefore(report.Examined)
            && !sheet.ConditionReports.Any(back => back.Occasion == ConditionOccasion.ComingBack && back.Ordinal > report.Ordinal));
    }
}
