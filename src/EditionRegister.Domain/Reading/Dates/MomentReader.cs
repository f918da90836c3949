using System.Globalization;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Reads one date of an EDTF text that is known to be well formed.</summary>
internal static class MomentReader
{
    /// <summary>Null where no year is said: open, unknown, XXXX, and years beyond four digits.</summary>
    public static Moment? Read(string edtf)
    {
        var plain = edtf.TrimEnd('?', '~', '%');

        if (plain.Length < 4 || plain[0] is 'X' or 'Y' or '.')
        {
            return null;
        }

        return Plain(plain) with { Plain = plain, IsAbout = edtf[^1] is '~' or '%', IsDoubted = edtf[^1] is '?' or '%' };
    }

    private static Moment Plain(string text)
    {
        var digits = text[0] == '-' ? 5 : 4;
        var rest = text[digits..].Split('-', StringSplitOptions.RemoveEmptyEntries);

        if (text[digits - 1] == 'X')
        {
            return text[digits - 2] == 'X' ? Century(Figure(text[..2])) : Decade(Figure(text[..3]));
        }

        var year = Years.OfAstronomical(Figure(text[..digits]));

        return rest switch
        {
            [var month] when Known(month) => Figure(month) > 12 ? Moment.OfSeason(year, Figure(month)) : Moment.OfMonth(year, Figure(month)),
            [var month, var day] when Known(month) => Known(day) ? Moment.OfDay(year, Figure(month), Figure(day[..2])) : Moment.OfMonth(year, Figure(month)),
            _ => Moment.OfYear(year),
        };
    }

    // 00XX and 000X begin before our era; what is left of them begins with the year 1.
    private static Moment Century(int hundreds) => hundreds > 0 ? Moment.OfCentury(hundreds + 1) : Moment.OfCentury(1) with { First = 1 };

    private static Moment Decade(int tens) => tens > 0 ? Moment.OfDecade(tens * 10) : Moment.OfDecade(1) with { First = 1, Last = 9 };

    private static bool Known(string part) => part[0] != 'X';

    private static int Figure(string text) => int.Parse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
}
