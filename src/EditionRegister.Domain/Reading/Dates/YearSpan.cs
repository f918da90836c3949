namespace EditionRegister.Domain.Reading.Dates;

/// <summary>The first and the last year something can mean; null where nobody can say, negative before our era.</summary>
public readonly record struct YearSpan(int? Earliest, int? Latest);
