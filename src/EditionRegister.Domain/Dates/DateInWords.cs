using System.Globalization;

namespace EditionRegister.Domain.Dates;

/// <summary>A recorded date as people read it on paper: "2 to 14 February 2026", "about 1926". What has no plain words stays as written.</summary>
public static class DateInWords
{
    private static readonly string[] Seasons = ["spring", "summer", "autumn", "winter"];

    public static string Of(RecordedDate date) => date.Text is not { } text ? "not known"
        : !Edtf.TryParse(text, out _) ? text
        : text.Split('/') is [var from, var to] ? Span(from, to) ?? text
        : Moment(text) ?? text;

    private static string? Span(string from, string to)
    {
        if (from is "" or ".." || to is "" or "..")
        {
            return null;
        }

        if (IsoDay.Read(from) is { } first && IsoDay.Read(to) is { } last && first.Year == last.Year)
        {
            return first.Month == last.Month
                ? string.Create(CultureInfo.InvariantCulture, $"{first.Day} to {Moment(to)}")
                : string.Create(CultureInfo.InvariantCulture, $"{first.Day} {MonthOf(first.Month)} to {Moment(to)}");
        }

        return Moment(from) is { } start && Moment(to) is { } end ? $"{start} to {end}" : null;
    }

    private static string? Moment(string text)
    {
        var doubt = text[^1] switch { '~' => "about ", '?' => "possibly ", '%' => "possibly about ", _ => "" };
        var plain = doubt.Length > 0 ? text[..^1] : text;
        var words = plain.Split('-') switch
        {
            [var year] when IsNumber(year, 4) => year,
            [var year, var month] when IsNumber(year, 4) && IsNumber(month, 2) => Part(year, int.Parse(month, CultureInfo.InvariantCulture)),
            _ => IsoDay.Read(plain) is { } day ? string.Create(CultureInfo.InvariantCulture, $"{day.Day} {MonthOf(day.Month)} {day.Year}") : null,
        };

        return words is null ? null : doubt + words;
    }

    private static string? Part(string year, int part) => part switch
    {
        >= 1 and <= 12 => $"{MonthOf(part)} {year}",
        >= 21 and <= 24 => $"{Seasons[part - 21]} {year}",
        _ => null,
    };

    private static string MonthOf(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    private static bool IsNumber(string text, int digits) => text.Length == digits && text.All(char.IsAsciiDigit);
}
