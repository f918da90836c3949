using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Chains;

/// <summary>How far a chain had surely come by the end of a day, and how far beyond that it may have come.</summary>
public sealed record ChainByDay<T>(IReadOnlyList<T> Sure, IReadOnlyList<T> Possible);

/// <summary>
/// Cuts chains at the end of a day. A link is surely of that time when its date says so, or when it was on record by then and its date does not say
/// otherwise; the links before a sure one are sure with it. A link whose date may be before or after the day is possible. The first link is where a sheet begins.
/// </summary>
public static class CutByDay
{
    /// <param name="links">The chain, in its order.</param>
    /// <param name="day">The day.</param>
    /// <param name="onRecord">Whether a link was on record by then, by its row.</param>
    public static ChainByDay<WhereaboutsLink> Whereabouts(IReadOnlyList<WhereaboutsLink> links, DateOnly day, Func<long, bool> onRecord) =>
        Cut(links, link => link.Moved, link => onRecord(link.Id), day);

    /// <param name="links">The chain, in its order.</param>
    /// <param name="day">The day.</param>
    /// <param name="onRecord">Whether a link was on record by then, by its row.</param>
    public static ChainByDay<OwnershipLink> Ownership(IReadOnlyList<OwnershipLink> links, DateOnly day, Func<long, bool> onRecord) =>
        Cut(links, link => link.Passed, link => onRecord(link.Id), day);

    private static ChainByDay<T> Cut<T>(IReadOnlyList<T> links, Func<T, RecordedDate> date, Func<T, bool> onRecord, DateOnly day)
    {
        var notAfter = links.TakeWhile(link => !(date(link).Earliest > day)).ToList();
        var lastSure = notAfter.FindLastIndex(link => date(link).Latest <= day || onRecord(link));
        var sure = Math.Max(lastSure + 1, Math.Min(1, notAfter.Count));

        return new ChainByDay<T>(notAfter[..sure], notAfter[sure..]);
    }
}
