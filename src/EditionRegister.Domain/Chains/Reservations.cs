using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Keeping sheets for someone, who may be nobody named yet; lifted, or fulfilled when that person gets the sheet.</summary>
public static class Reservations
{
    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What is kept.</param>
    /// <param name="person">For whom, or null.</param>
    /// <param name="made">Since when.</param>
    /// <param name="until">Until when.</param>
    /// <param name="note">As written.</param>
    /// <param name="deed">Where the facts go.</param>
    public static void Reserve(Work work, IReadOnlyList<Impression> sheets, long? person, RecordedDate made, RecordedDate until, string? note, Deed deed)
    {
        if (until.SurelyBefore(made))
        {
            throw MoveRefusals.UntilBefore(until, made);
        }

        foreach (var sheet in sheets)
        {
            Free(work, sheet);
            var id = deed.NewId("reservation");
            deed.Set("reservation", id, ("impression", sheet.Id), ("person", person), ("standing", "standing"), ("note", note));
            deed.SetDate("reservation", id, "made", made);
            deed.SetDate("reservation", id, "until", until);
        }
    }

    /// <exception cref="RefusedException">not-reserved.</exception>
    public static void Lift(IReadOnlyList<Impression> sheets, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            deed.Set("reservation", (sheet.StandingReservation ?? throw MoveRefusals.NotReserved(sheet)).Id, ("standing", "lifted"));
        }
    }

    /// <summary>What becomes of a reservation when the sheet passes to someone: fulfilled by the one it was kept for, else lifted where that was meant.</summary>
    /// <param name="work">The work.</param>
    /// <param name="sheet">The sheet that passes.</param>
    /// <param name="to">To whom; null is nobody known.</param>
    /// <param name="agent">Who acts for the owner, or null.</param>
    /// <param name="despite">Also where it is kept for, or on approval with, somebody else.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">reserved-for-another or on-approval-with-another.</exception>
    internal static void Settle(Work work, Impression sheet, long? to, long? agent, bool despite, Deed deed)
    {
        if (!despite && sheet.Whereabouts is [.., { Kind: "on-approval", To.Holder: { } has } last] && has != to && has != agent)
        {
            throw MoveRefusals.OnApproval(sheet, WhereInWords.PersonNamed(has, work.Book), last.Until);
        }

        if (sheet.StandingReservation is not { } reservation)
        {
            return;
        }

        var isTheirs = reservation.Person is null || reservation.Person == to;

        if (!isTheirs && !despite)
        {
            throw MoveRefusals.ReservedForAnother(sheet, WhereInWords.PersonNamed(reservation.Person, work.Book), reservation.Until);
        }

        deed.Set("reservation", reservation.Id, ("standing", isTheirs ? "fulfilled" : "lifted"));
    }

    private static void Free(Work work, Impression sheet)
    {
        if (sheet.StandingReservation is { } standing)
        {
            throw MoveRefusals.ReservedAlready(sheet, standing.Person is { } person ? WhereInWords.PersonNamed(person, work.Book) : "somebody not named", standing.Until);
        }

        if (sheet.Where is { State: "gone" })
        {
            throw ChainRefusals.Gone(sheet);
        }

        if (WhereaboutsDeeds.IsMissing(sheet))
        {
            throw MoveRefusals.Missing(sheet, sheet.Whereabouts[^1]);
        }

        if (Transfers.HasLeftTheMaker(work, sheet))
        {
            throw MoveRefusals.NotOursToReserve(sheet, WhereInWords.OwnerOf(work, sheet));
        }
    }
}
