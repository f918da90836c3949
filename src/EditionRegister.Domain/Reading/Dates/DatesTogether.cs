namespace EditionRegister.Domain.Reading.Dates;

/// <summary>What two dates of one thing come to: a list covers both, a bound narrows.</summary>
internal static class DatesTogether
{
    /// <summary>1828, 1843: from the first to the last. 18th century, after 1713: both at once.</summary>
    public static DateSaid Listed(IReadOnlyList<DateSaid> dates) => Fold(dates, static (one, other) => one.IsOpen || other.IsOpen);

    /// <summary>Qing Dynasty (1644-1912), K'ang Hsi Reign (1662-1722): periods that meet are said one inside the other.</summary>
    public static DateSaid OfPeriods(IReadOnlyList<DateSaid> dates) => Fold(dates, static (_, _) => true);

    /// <summary>What both can mean, or null where they do not meet.</summary>
    public static DateSaid? Narrowed(DateSaid one, DateSaid other)
    {
        var begin = one.From is not { } first ? other.From : other.From is { } second && first.StartsBefore(second) ? second : first;
        var to = one.To is not { } last ? other.To : other.To is { } end && end.EndsBefore(last) ? end : last;

        return begin is { } starts && to is { } ends && starts.StartsAfterTheEndOf(ends) ? null
            : begin == one.From && to == one.To ? one
            : begin == other.From && to == other.To ? other with { Doubt = one.Doubt ?? other.Doubt }
            : DateSaid.Span(begin, to, other.Next) with { Doubt = one.Doubt ?? other.Doubt };
    }

    private static DateSaid Fold(IReadOnlyList<DateSaid> dates, Func<DateSaid, DateSaid, bool> mayNarrow) =>
        dates.Aggregate((one, other) => mayNarrow(one, other) && Narrowed(one, other) is { } both ? both : Covering(one, other));

    private static DateSaid Covering(DateSaid one, DateSaid other)
    {
        Moment? from = one.From is { } first && other.From is { } second ? second.StartsBefore(first) ? second : first : null;
        Moment? to = one.To is { } last && other.To is { } end ? last.EndsBefore(end) ? end : last : null;

        return from == to && !one.IsSpan && !other.IsSpan ? one : DateSaid.Span(from, to, other.Next) with { Doubt = one.Doubt ?? other.Doubt };
    }
}
