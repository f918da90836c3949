using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>What befalls a sheet: it is lost, stolen or destroyed, and it may be found again.</summary>
public static class Mishaps
{
    public static IReadOnlyList<MoveKind> Kinds { get; } = [MoveKind.Lost, MoveKind.Stolen, MoveKind.Destroyed];

    /// <summary>Its number stays given. A destroyed sheet's certificate is withdrawn and its reservation lifted in the same entry. Answers the serials of those.</summary>
    public static IReadOnlyList<string> Record(Work work, IReadOnlyList<Impression> sheets, MoveKind kind, RecordedDate date, string? note, Deed deed)
    {
        List<string> withdrawn = [];

        foreach (var sheet in sheets)
        {
            WhereaboutsDeeds.Move(work, sheet, kind, kind == MoveKind.Destroyed ? Position.Gone : Position.Unknown, date, note, deed);

            if (kind == MoveKind.Destroyed && sheet.ValidCertificate is { } certificate)
            {
                deed.Set("document", certificate.Id, ("standing", "withdrawn"));
                withdrawn.Add(certificate.Serial);
            }

            if (kind == MoveKind.Destroyed && sheet.StandingReservation is { } reservation)
            {
                deed.Set("reservation", reservation.Id, ("standing", "lifted"));
            }
        }

        return withdrawn;
    }

    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What was found.</param>
    /// <param name="to">Where it is now; null for the maker's hands.</param>
    /// <param name="date">When.</param>
    /// <param name="note">As written.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">sheet-not-missing.</exception>
    public static void Find(Work work, IReadOnlyList<Impression> sheets, Position? to, RecordedDate date, string? note, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            // A sheet nobody knows the whereabouts of turns up as one that was lost does.
            if (!WhereaboutsDeeds.IsMissing(sheet) && sheet.Where is not ({ State: "gone" or "unknown" } or null))
            {
                throw MoveRefusals.NotMissing(sheet, WhereInWords.Of(work, sheet));
            }

            WhereaboutsDeeds.Move(work, sheet, MoveKind.Found, to ?? WhereaboutsDeeds.Home(work, place: null), date, note, deed);
        }
    }
}
