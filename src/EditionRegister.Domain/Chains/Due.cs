using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>One sheet that is to be back, collected, answered for or let go by a day.</summary>
/// <param name="Work">The work.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="What">consigned, lent, reserved ... in words.</param>
/// <param name="Person">With whom or for whom; null where nobody is named.</param>
/// <param name="Until">Until when.</param>
/// <param name="HasPassed">Surely over on the day looked at; else it may still come.</param>
public sealed record DueSheet(Work Work, Impression Sheet, string What, long? Person, RecordedDate Until, bool HasPassed);

/// <summary>What is over or will be within some days: consigned, lent, on approval, away for a time, awaiting collection, reserved.</summary>
public static class Due
{
    /// <param name="work">The work.</param>
    /// <param name="on">The day looked at.</param>
    /// <param name="days">How many days ahead.</param>
    public static IEnumerable<DueSheet> Of(Work work, DateOnly on, int days)
    {
        var horizon = days > DateOnly.MaxValue.DayNumber - on.DayNumber ? DateOnly.MaxValue : on.AddDays(days);

        return work.Impressions.SelectMany(sheet => Of(work, sheet)).Where(due => due.Until.Earliest <= horizon).Select(due => due with { HasPassed = due.Until.Latest < on });
    }

    private static IEnumerable<DueSheet> Of(Work work, Impression sheet)
    {
        if (sheet.StandingReservation is { Until.IsKnown: true } reserved)
        {
            yield return new DueSheet(work, sheet, "reserved", reserved.Person, reserved.Until, false);
        }

        var consigned = Consignments.StandingOf(work, sheet);

        if (consigned is { Until.IsKnown: true })
        {
            yield return Step(consigned);
        }

        if (sheet.Whereabouts is [.., { Until.IsKnown: true } last] && last != consigned && Waits(sheet, last))
        {
            yield return Step(last);
        }

        DueSheet Step(WhereaboutsLink link) => new(work, sheet, MoveKind.Of(link.Kind)?.Name ?? link.Kind, link.To.Holder, link.Until, false);
    }

    // What was sold since is no longer waited for: but a loan or a show runs on, whoever owns the sheet.
    private static bool Waits(Impression sheet, WhereaboutsLink link) =>
        link.Kind is not ("consigned" or "sub-consigned" or "on-approval") || !Transfers.HasPassedOnSince(sheet, link);
}
