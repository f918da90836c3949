using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Conditions;

/// <summary>A condition report as it is written: the same for every sheet it is about.</summary>
public sealed record NewConditionReport
{
    public required string Occasion { get; init; }

    public required RecordedDate Examined { get; init; }

    public long? Examiner { get; init; }

    /// <summary>In a sentence.</summary>
    public string? Summary { get; init; }

    public IReadOnlyList<RemarkMade> Remarks { get; init; } = [];

    /// <summary>What the sheets' short present condition is from now on; null leaves it.</summary>
    public string? Condition { get; init; }

    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What was examined.</param>
    /// <param name="terms">Every term the register knows.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">One of <see cref="ConditionRefusals"/>.</exception>
    public void Record(Work work, IReadOnlyList<Impression> sheets, IReadOnlyList<ConditionTerm> terms, Deed deed)
    {
        Demand(work, terms);

        foreach (var sheet in sheets)
        {
            RunsForwards(work, sheet);
            var report = deed.NewId("condition_report");
            deed.Set("condition_report", report,
                ("impression", sheet.Id), ("ordinal", sheet.ConditionReports.Count + 1), ("occasion", Occasion), ("examiner", Examiner), ("summary", Summary));
            deed.SetDate("condition_report", report, "examined", Examined);
            Write(report, deed);

            if (Condition is not null)
            {
                deed.Set("impression", sheet.Id, ("condition", Condition));
            }
        }
    }

    private void Write(long report, Deed deed)
    {
        for (var at = 0; at < Remarks.Count; at++)
        {
            var remark = Remarks[at];
            deed.Set("condition_remark", deed.NewId("condition_remark"),
                ("report", report), ("ordinal", at + 1), ("term", remark.Term), ("position", remark.Position), ("note", remark.Note), ("picture", remark.Picture));
        }
    }

    private void Demand(Work work, IReadOnlyList<ConditionTerm> terms)
    {
        if (!ConditionOccasion.All.Contains(Occasion))
        {
            throw ConditionRefusals.OccasionUnknown(Occasion);
        }

        if (Remarks.Count == 0 && Summary is null)
        {
            throw ConditionRefusals.NothingSaid();
        }

        foreach (var remark in Remarks)
        {
            if (terms.All(term => term.Word != remark.Term))
            {
                throw ConditionRefusals.TermUnknown(remark.Term, terms);
            }

            if (remark.Picture is { } picture && work.Pictures.All(known => known.Id != picture))
            {
                throw ConditionRefusals.NoSuchPicture(picture, work);
            }
        }
    }

    /// <summary>Only a sure conflict is refused; reports run forward as chains do.</summary>
    private void RunsForwards(Work work, Impression sheet)
    {
        if (work.RunOf(sheet)?.Printed is { } printed && Examined.SurelyBefore(printed))
        {
            throw ConditionRefusals.BeforePrinted(sheet, Examined, printed);
        }

        if (sheet.ConditionReports.LastOrDefault(before => Examined.SurelyBefore(before.Examined)) is { } later)
        {
            throw ConditionRefusals.BeforeLastReport(sheet, Examined, later.Examined);
        }
    }
}
