using System.Globalization;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>How fine a moment is, from coarse to fine.</summary>
internal enum MomentKind : byte
{
    Century,
    Decade,
    Year,
    Season,
    Month,
    Day,
}

/// <summary>One date of the Extended Date/Time Format, with the first and the last day it covers. Years are as people count: negative before our era, no year nought.</summary>
/// <param name="Kind">How fine it is.</param>
/// <param name="Plain">Its form in EDTF without what doubts it.</param>
/// <param name="First">The first year it covers.</param>
/// <param name="StartsOn">Month and day of its first day, as 1231.</param>
/// <param name="Last">The last year it covers.</param>
/// <param name="EndsOn">Month and day of its last day.</param>
internal readonly record struct Moment(MomentKind Kind, string Plain, int First, int StartsOn, int Last, int EndsOn)
{
    private const int NewYear = 0101;
    private const int YearsEnd = 1231;

    public bool IsAbout { get; init; }

    public bool IsDoubted { get; init; }

    public string Edtf => Plain + (IsAbout ? IsDoubted ? "%" : "~" : IsDoubted ? "?" : "");

    /// <summary>An end of a span: level 1 has no digits left open there, so a decade or century becomes its first year.</summary>
    public Moment Beginning => Kind <= MomentKind.Decade ? OfYear(First) with { IsAbout = IsAbout, IsDoubted = IsDoubted } : this;

    /// <summary>The same at the other end.</summary>
    public Moment Ending => Kind <= MomentKind.Decade ? OfYear(Last) with { IsAbout = IsAbout, IsDoubted = IsDoubted } : this;

    public static Moment OfYear(int year) => Whole(MomentKind.Year, Iso(year), year, year);

    public static Moment OfDecade(int first) => Whole(MomentKind.Decade, $"{Iso(first)[..3]}X", first, first + 9);

    /// <summary>The second century of our era and later: the first has no year nought, and needs a span.</summary>
    public static Moment OfCentury(int number) => Whole(MomentKind.Century, $"{Two(number - 1)}XX", ((number - 1) * 100) + DateConventions.FirstYearOfCentury, ((number - 1) * 100) + 99);

    public static Moment OfMonth(int year, int month) =>
        new(MomentKind.Month, $"{Iso(year)}-{Two(month)}", year, (month * 100) + 1, year, (month * 100) + DaysIn(year, month));

    public static Moment OfDay(int year, int month, int day) => new(MomentKind.Day, $"{Iso(year)}-{Two(month)}-{Two(day)}", year, (month * 100) + day, year, (month * 100) + day);

    /// <summary>21 to 24, spring to winter, by the months of <see cref="Season"/>.</summary>
    public static Moment OfSeason(int year, int code)
    {
        var first = 3 * (code - 20);
        var last = ((first + 1) % 12) + 1;
        var end = last < first ? Years.Shifted(year, 1) : year;

        return new Moment(MomentKind.Season, $"{Iso(year)}-{code}", year, (first * 100) + 1, end, (last * 100) + DaysIn(end, last));
    }

    public static bool IsDay(int year, int month, int day) => month is >= 1 and <= 12 && day >= 1 && day <= DaysIn(year, month);

    public bool StartsBefore(Moment other) => (First, StartsOn).CompareTo((other.First, other.StartsOn)) < 0;

    public bool EndsBefore(Moment other) => (Last, EndsOn).CompareTo((other.Last, other.EndsOn)) < 0;

    public bool StartsAfterTheEndOf(Moment other) => (First, StartsOn).CompareTo((other.Last, other.EndsOn)) > 0;

    private static Moment Whole(MomentKind kind, string plain, int first, int last) => new(kind, plain, first, NewYear, last, YearsEnd);

    private static string Iso(int year) => Years.Astronomical(year).ToString("0000", CultureInfo.InvariantCulture);

    private static string Two(int figure) => figure.ToString("00", CultureInfo.InvariantCulture);

    // The calendar repeats every 400 years, also before the year 1.
    private static int DaysIn(int year, int month) => DateTime.DaysInMonth((((Years.Astronomical(year) % 400) + 400) % 400) + 400, month);
}
