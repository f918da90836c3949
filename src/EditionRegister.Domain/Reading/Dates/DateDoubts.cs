namespace EditionRegister.Domain.Reading.Dates;

/// <summary>What of a date was taken without being sure, in words for a person.</summary>
internal static class DateDoubts
{
    public const string DayOrMonth = "which is the month is not sure";
    public const string NoCentury = "the century is not written";
    public const string NoSuchDay = "there is no such day";
    public const string HundredOrTen = "the decade may be meant";

    public const string RestUnread = "what stands behind it is not read";

    public static string MonthOrSpan(int from, int to) => $"the years {from} to {to} are written the same";
}
