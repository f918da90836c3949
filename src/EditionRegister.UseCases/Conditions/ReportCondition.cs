using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Conditions;

/// <summary>A condition report as a person writes it.</summary>
public sealed record ConditionToReport
{
    public string Occasion { get; init; } = ConditionOccasion.AtRest;

    /// <summary>Today when not said.</summary>
    public RecordedDate? Date { get; init; }

    /// <summary>Who looked: a name or number of the address book; the one who writes when not said.</summary>
    public string? Examiner { get; init; }

    public string? Summary { get; init; }

    /// <summary>Each in the form <see cref="RemarkMade.Form"/>.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>What the sheets' short present condition is from now on; null leaves it.</summary>
    public string? Condition { get; init; }
}

/// <summary>Records how sheets are, as someone saw them.</summary>
public sealed class ReportCondition(RegisterStore store, long? by)
{
    /// <summary>Answers how many sheets it was done to.</summary>
    /// <exception cref="Domain.RefusedException">One of <see cref="ConditionRefusals"/>, or a choice that finds nothing.</exception>
    public int Run(ImpressionChoice choice, ConditionToReport wanted) => DeedOnChosen.Run(store, "report-condition", choice, (writing, chosen, deed) => new NewConditionReport
    {
        Occasion = wanted.Occasion,
        Examined = wanted.Date ?? Today.Of(store),
        Examiner = wanted.Examiner is { } who ? Persons.Find(writing.Read.Book, who) : by,
        Summary = wanted.Summary,
        Remarks = [.. wanted.Remarks.Select(RemarkMade.Read)],
        Condition = wanted.Condition,
    }.Record(chosen.Work, chosen.Sheets, writing.Read.ConditionTerms(), deed));
}
