using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Inventory;

/// <summary>Whether a sheet can be offered: the maker's, numbered and kept, not gone or missing, not reserved, and for sale by custom or by decision.</summary>
public static class FreeToSell
{
    public const string Yes = "yes";
    public const string No = "no";
    public const string Unknown = "unknown";

    /// <summary>"yes", "no" or "unknown"; one sure no is a no, whatever else is unknown.</summary>
    public static string Of(Work work, Impression impression)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);

        string[] answers = [Intended(work, impression), IsKept(work, impression), IsTheMakers(work, impression), IsThere(impression), IsUnreserved(impression)];

        return answers.Contains(No) ? No : answers.Contains(Unknown) ? Unknown : Yes;
    }

    private static string Intended(Work work, Impression impression) => impression.ForSale switch
    {
        "yes" => Yes,
        "no" => No,
        "by-custom" => work.NumberingOf(impression)?.Kind is { } kind ? Answer(kind.ForSale) : Unknown,
        _ => Unknown,
    };

    // A proof sold by custom may be one that was held out.
    private static string IsKept(Work work, Impression impression) => impression.Standing switch
    {
        "kept" => Yes,
        "held-out" => Answer(work.NumberingOf(impression)?.Kind is { InSize: false }),
        "pulled" or "spare" or "left-out" => No,
        _ => Unknown,
    };

    private static string IsTheMakers(Work work, Impression impression) =>
        impression.Whose is not { State: "known", Person: { } owner } ? (Transfers.HasLeftTheMaker(work, impression) ? No : Unknown)
        : work.MakersAndEstate.Any(maker => maker.Id == owner) ? Yes
        : work.Makers.Any() ? No
        : Unknown;

    private static string IsThere(Impression impression) => impression.Where?.State switch
    {
        "placed" or "with" => Yes,
        "gone" => No,
        _ => WhereaboutsDeeds.IsMissing(impression) ? No : Unknown,
    };

    // One whose day has passed still stands until it is lifted: only the keeper knows what was promised.
    private static string IsUnreserved(Impression impression) => Answer(impression.StandingReservation is null);

    private static string Answer(bool yes) => yes ? Yes : No;
}
