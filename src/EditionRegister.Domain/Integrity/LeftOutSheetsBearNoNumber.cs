using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Only a kept sheet, or one held out as a proof, bears a number.</summary>
public sealed class LeftOutSheetsBearNoNumber : IRule
{
    public string Name => nameof(LeftOutSheetsBearNoNumber);

    public string Sentence => "A sheet left out, kept as a spare or not yet sorted bears no number, and one held out as a proof none of the edition's own.";

    public string Basis => "common practice, no source";

    public IEnumerable<Finding> Check(Work work) => work.Impressions.SelectMany(sheet => Given(work, sheet).Concat(Pencilled(work, sheet)));

    private IEnumerable<Finding> Given(Work work, Impression sheet)
    {
        if (IsUnnumbered(sheet) && (sheet.Numbering is not null || sheet.Number is not null))
        {
            yield return this.Contradiction(
                work.SubjectOf(sheet),
                $"{work.CalledSheet(sheet)} is {Standing(sheet)}, and has a place in the edition.",
                "Take the number back, or keep the sheet.");
        }
        else if (sheet.Standing == "held-out" && work.NumberingOf(sheet)?.Kind is { InSize: true })
        {
            yield return this.Contradiction(
                work.SubjectOf(sheet),
                $"{work.CalledSheet(sheet)} is held out as a proof, and has a place in the edition itself.",
                "Number it as a proof, or keep the sheet for the edition.");
        }
    }

    private IEnumerable<Finding> Pencilled(Work work, Impression sheet)
    {
        if (IsUnnumbered(sheet) && !sheet.IsDestroyed && sheet.Read(expected: null, work.OwnWords) is { } says && (says.Number is not null || says.Kind.InTotal))
        {
            yield return this.Find(
                Gravity(sheet, says),
                work.SubjectOf(sheet),
                $"{work.Pencil(sheet, says)} is pencilled on {sheet.ShownCode} of {work.Called}, which is {Standing(sheet)}.",
                "Take the pencil off and record what is changed on the sheet, or keep the sheet and give it that number.");
        }
    }

    private static Severity Gravity(Impression sheet, PencilledNumber says) =>
        says.Number is not null && says.Kind.InTotal && sheet.Standing != "pulled" ? Severity.Contradiction : Severity.Query;

    private static bool IsUnnumbered(Impression sheet) => sheet.Standing is "left-out" or "spare" or "pulled";

    private static string Standing(Impression sheet) => sheet.Standing switch
    {
        "left-out" => "left out",
        "spare" => "a spare",
        _ => "not sorted yet",
    };
}
