using System.Globalization;
using System.Text.RegularExpressions;

namespace EditionRegister.Domain.Dates;

/// <summary>One date of EDTF level 0 or 1: day, month, year, season, unspecified digits from the right, or a year beyond four digits.</summary>
internal static partial class EdtfDate
{
    public static bool TryRead(string text, out DateSpan span)
    {
        span = default;

        // A year beyond four digits is a date and has no bounds that a calendar here could hold.
        if (LongYear().IsMatch(text))
        {
            return true;
        }

        return Pattern().Match(text) is { Success: true } parts
            && (parts.Groups["unspecified"].Success || TryReadKnown(parts, out span))
            && parts.Groups["year"].Value != "-0000";
    }

    [GeneratedRegex(@"^Y-?[1-9][0-9]{4,}\z", RegexOptions.CultureInvariant)]
    private static partial Regex LongYear();

    // Where the whole year is unspecified nothing is known. Digits may be unspecified from the right only.
    [GeneratedRegex(
        @"^(?:(?<unspecified>XXXX(?:-XX(?:-XX)?)?)|(?<year>[0-9]{2}XX|[0-9]{3}X)|(?<year>-?[0-9]{4})(?:-(?:(?<month>[0-9]{2})(?:-(?<day>[0-9]{2}|XX))?|XX(?:-XX)?))?)[?~%]?\z",
        RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();

    private static bool TryReadKnown(Match parts, out DateSpan span)
    {
        var (firstYear, lastYear) = (Figure(parts, "year", 'X', '0'), Figure(parts, "year", 'X', '9'));
        span = default;

        if (!parts.Groups["month"].Success)
        {
            span = new DateSpan(Day(firstYear, 1, 1), Day(lastYear, 12, 31));
            return true;
        }

        var (month, dayGroup) = (Figure(parts, "month"), parts.Groups["day"]);

        if (Season.TryRead(firstYear, month, out span))
        {
            return !dayGroup.Success;
        }

        if (month is < 1 or > 12)
        {
            return false;
        }

        var lastDay = DaysIn(firstYear, month);
        var day = dayGroup.Success && dayGroup.Value != "XX" ? Figure(parts, "day") : 0;
        span = day == 0
            ? new DateSpan(Day(firstYear, month, 1), Day(firstYear, month, lastDay))
            : new DateSpan(Day(firstYear, month, Math.Min(day, lastDay)), Day(firstYear, month, Math.Min(day, lastDay)));

        return day <= lastDay && dayGroup.Value != "00";
    }

    private static int Figure(Match parts, string group, char unspecified = '0', char instead = '0') =>
        int.Parse(parts.Groups[group].Value.Replace(unspecified, instead), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);

    // The calendar repeats every 400 years, also before the year 1.
    private static int DaysIn(int year, int month) => DateTime.DaysInMonth((((year % 400) + 400) % 400) + 400, month);

    private static DateOnly? Day(int year, int month, int day) => year is >= 1 and <= 9999 ? new DateOnly(year, month, day) : null;
}
