namespace EditionRegister.Domain.Dates;

/// <summary>A day as the register keeps it, <c>2026-03-01</c>. Read by hand: the framework's own reader first sets up calendars and patterns.</summary>
internal static class IsoDay
{
    /// <summary>Null for anything but ten characters that name a day of the years 1 to 9999.</summary>
    public static DateOnly? Read(string? text)
    {
        if (text is not [_, _, _, _, '-', _, _, '-', _, _])
        {
            return null;
        }

        var (year, month, day) = (Figure(text.AsSpan(0, 4)), Figure(text.AsSpan(5, 2)), Figure(text.AsSpan(8, 2)));

        return year >= 1 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;
    }

    private static int Figure(ReadOnlySpan<char> digits)
    {
        var figure = 0;

        foreach (var digit in digits)
        {
            if (!char.IsAsciiDigit(digit))
            {
                return -1;
            }

            figure = (figure * 10) + (digit - '0');
        }

        return figure;
    }
}
