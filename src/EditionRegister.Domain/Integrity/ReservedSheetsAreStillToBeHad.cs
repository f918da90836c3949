using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What is kept for someone has not passed to another.</summary>
public sealed class ReservedSheetsAreStillToBeHad : IRule
{
    public string Name => nameof(ReservedSheetsAreStillToBeHad);

    public string Sentence => "A sheet that is reserved is still the maker's and not gone: a reservation ends when the sheet passes to someone.";

    public string Basis => "common practice, no source: a reservation is kept or lifted, and what is sold cannot be kept for anyone";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        let reservation = sheet.StandingReservation
        where reservation is not null
        let why = Why(work, sheet)
        where why is not null
        select this.Query(
            work.SubjectOf(sheet),
            $"{work.CalledSheet(sheet)} is reserved for {For(work, reservation)}, and {why}.",
            "Lift the reservation, or take the step back by which the sheet went, where it was recorded by mistake.");

    private static string For(Work work, Reservation reservation) => reservation.Person is { } person ? WhereInWords.PersonNamed(person, work.Book) : "somebody not named";

    private static string? Why(Work work, Impression sheet) =>
        sheet.Where is { State: "gone" } ? "it is gone for good"
        : Transfers.HasLeftTheMaker(work, sheet) ? $"it belongs to {WhereInWords.OwnerOf(work, sheet)}"
        : null;
}
