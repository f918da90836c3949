using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Conditions;

/// <summary>What someone saw when examining a sheet on a day.</summary>
/// <param name="Id">Its row.</param>
/// <param name="V">The entry that last wrote it.</param>
/// <param name="Ordinal">Its place among the reports of the sheet, from one.</param>
/// <param name="Occasion">at-rest, going-out or coming-back.</param>
/// <param name="Examined">When.</param>
/// <param name="Examiner">By whom, or null.</param>
/// <param name="Summary">In a sentence, as written.</param>
/// <param name="Remarks">What was seen, place by place.</param>
public sealed record ConditionReport(
    long Id, long V, int Ordinal, string Occasion, RecordedDate Examined, long? Examiner, string? Summary, IReadOnlyList<ConditionRemark> Remarks);

/// <summary>One thing seen on a sheet: its term, where on the sheet, and a picture of it.</summary>
public sealed record ConditionRemark(long Id, int Ordinal, string Term, string? Position, string? Note, long? Picture);
