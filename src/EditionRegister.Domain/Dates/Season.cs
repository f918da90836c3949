namespace EditionRegister.Domain.Dates;

/// <summary>
/// The seasons 21 to 24 as the north has them, by whole months: spring is March to May, and winter begins in December
/// of the year named (common practice, no source: the format itself leaves the months open).
/// </summary>
internal static class Season
{
    public static bool TryRead(int year, int code, out DateSpan span)
    {
        span = default;

        if (code is < 21 or > 24)
        {
            return false;
        }

        var firstMonth = 3 * (code - 20);
        var first = year is >= 1 and <= 9999 ? new DateOnly(year, firstMonth, 1) : (DateOnly?)null;
        var last = first is { } day && day < new DateOnly(9999, 12, 1) ? day.AddMonths(3).AddDays(-1) : (DateOnly?)null;
        span = new DateSpan(first, last);

        return true;
    }
}
