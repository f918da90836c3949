using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>
/// A consignment that stands: the consignee answers for the sheet to its owner, wherever it has been sent since (to a framer, a show, another
/// consignee), until it comes home, is handed to an owner, or changes hands.
/// </summary>
public static class Consignments
{
    /// <summary>The step by which the sheet was consigned, with the terms its owner agreed to; null where no consignment stands.</summary>
    public static WhereaboutsLink? StandingOf(Work work, Impression sheet)
    {
        for (var at = sheet.Whereabouts.Count - 1; at >= 0; at--)
        {
            var link = sheet.Whereabouts[at];

            if (link.Kind == MoveKind.Consigned.Word)
            {
                return Transfers.HasPassedOnSince(sheet, link) ? null : link;
            }

            if (Ends(work, sheet, at))
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>Who answers for it and through whose hands it went since: the consignee first, then whoever it was passed on to.</summary>
    public static IReadOnlyList<long> HandsOf(Work work, Impression sheet) => StandingOf(work, sheet) is { } standing
        ? [.. sheet.Whereabouts.Where(link => link == standing || (link.Ordinal > standing.Ordinal && link.Kind == MoveKind.SubConsigned.Word)).Select(link => link.To.Holder).OfType<long>()]
        : [];

    private static bool Ends(Work work, Impression sheet, int at)
    {
        var link = sheet.Whereabouts[at];

        return link.Kind switch
        {
            "pulled" or "as-listed" or "returned" or "collected" => true,
            "put-away" or "found" => !IsAtAConsignees(work, sheet, link),
            _ => false,
        };
    }

    /// <summary>Put away in a place that somebody keeps to whom it had been consigned.</summary>
    private static bool IsAtAConsignees(Work work, Impression sheet, WhereaboutsLink link) =>
        sheet.Whereabouts.Any(before => before.Ordinal < link.Ordinal && before.Kind is "consigned" or "sub-consigned"
            && before.To.Holder is { } holder
            && (link.To.Holder == holder || (link.To.Place is { } place && WhereaboutsDeeds.IsKeptBy(work, place, holder))));
}
