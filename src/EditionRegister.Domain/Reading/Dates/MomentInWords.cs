using System.Globalization;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A date or span in plain words, and the years or months it comes to where the words do not say them.</summary>
internal static class MomentInWords
{
    private static readonly string[] SeasonNames = ["spring", "summer", "autumn", "winter"];

    /// <summary>About 1926, spring 2024, 10 to 12 June 1954, 1713 or later.</summary>
    public static string Of(DateSaid date) => date switch
    {
        { IsSpan: false, From: { } one } => Doubt(one) + Plain(one),
        { From: { } from, To: { } to } => Span(from, to),
        { From: { } from } => $"{Doubt(from)}{Plain(from)} or later",
        { To: { } to } => $"{Doubt(to)}{Plain(to)} or earlier",
        _ => date.IsSpan ? "open at both ends" : "no date",
    };

    /// <summary>1921 to 1931 for about 1926, March to May 2024 for spring 2024; null where the words say it already.</summary>
    public static string? Bounds(DateSaid date) => date is not { IsSpan: false, From: { } one, Earliest: { } first, Latest: { } last } ? null
        : one.Kind == MomentKind.Season ? Months(one)
        : one.Kind <= MomentKind.Decade || (first, last) != (one.First, one.Last) ? $"{Year(first)} to {Year(last)}"
        : null;

    private static string Span(Moment from, Moment to)
    {
        var doubt = (from.IsAbout, from.IsDoubted) == (to.IsAbout, to.IsDoubted);

        return doubt ? $"{Doubt(from)}{Start(from, to)} to {Plain(to)}" : $"{Doubt(from)}{Start(from, to)} to {Doubt(to)}{Plain(to)}";
    }

    // Of the first of two days or months only what differs is said.
    private static string Start(Moment from, Moment to) =>
        from.Kind != to.Kind || from.First != to.First || from.Kind == MomentKind.Year ? Plain(from)
        : from.Kind == MomentKind.Day && Month(from.StartsOn) == Month(to.StartsOn) ? Figure(from.StartsOn % 100)
        : Plain(from)[..Plain(from).LastIndexOf(Year(from.First), StringComparison.Ordinal)].TrimEnd();

    private static string Plain(Moment moment) => moment.Kind switch
    {
        MomentKind.Century => $"the {Ordinal((moment.Last / 100) + 1)} century",
        MomentKind.Decade => $"the {moment.Last / 10 * 10}s",
        MomentKind.Season => $"{SeasonNames[moment.Plain[^1] - '1']} {Year(moment.First)}",
        MomentKind.Month => $"{Month(moment.StartsOn)} {Year(moment.First)}",
        MomentKind.Day => $"{Figure(moment.StartsOn % 100)} {Month(moment.StartsOn)} {Year(moment.First)}",
        _ => Year(moment.First),
    };

    private static string Months(Moment season) => season.First == season.Last
        ? $"{Month(season.StartsOn)} to {Month(season.EndsOn)} {Year(season.Last)}"
        : $"{Month(season.StartsOn)} {Year(season.First)} to {Month(season.EndsOn)} {Year(season.Last)}";

    private static string Doubt(Moment moment) => (moment.IsDoubted ? "possibly " : "") + (moment.IsAbout ? "about " : "");

    private static string Month(int day) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(day / 100);

    private static string Year(int year) => year < 0 ? $"{Figure(-year)} BC" : year < 1000 ? $"AD {Figure(year)}" : Figure(year);

    private static string Ordinal(int figure) => Figure(figure) + ((figure % 10, figure / 10) switch { (_, 1) => "th", (1, _) => "st", (2, _) => "nd", (3, _) => "rd", _ => "th" });

    private static string Figure(int figure) => figure.ToString(CultureInfo.InvariantCulture);
}
