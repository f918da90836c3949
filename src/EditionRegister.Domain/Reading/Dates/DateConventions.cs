namespace EditionRegister.Domain.Reading.Dates;

/// <summary>
/// What the words of a date mean in years, in one table, fixed before any figure was measured. Museums differ in all of these; the
/// text as written always stays beside what is read. Common practice, no source, unless a line names one.
/// </summary>
public static class DateConventions
{
    /// <summary>c. 1926 means 1921 to 1931.</summary>
    public const int AboutYears = 5;

    /// <summary>c. before a span widens it by as much at both ends.</summary>
    public const int AboutSpanYears = 5;

    /// <summary>Before 1645 begins, and after 1560 ends, so many years away.</summary>
    public const int OpenYears = 25;

    /// <summary>Early and late mean the first and the last half: of a century fifty years, of a decade five.</summary>
    public const int Halves = 2;

    /// <summary>The 19th century is 1800 to 1899, as people say it and most museums write it; a strict count would begin in 1801.</summary>
    public const int FirstYearOfCentury = 0;
}
