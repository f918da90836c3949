using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>The moment after which an edition never grows: its first sheet is signed, or has left the maker's hands.</summary>
public static class Leaving
{
    public static bool IsSignedOrHasLeft(Impression sheet) => sheet.IsSigned || HasLeft(sheet);

    public static bool HasLeft(Impression sheet) =>
        sheet.Whereabouts.Any(link => MoveKind.Of(link.Kind) is { Leaves: true }) || sheet.Ownership.Any(link => MoveKind.Of(link.Kind) is { Leaves: true });

    public static bool HasBegun(Work work, Edition edition) =>
        work.Impressions.Any(sheet => work.EditionOf(sheet)?.Id == edition.Id && IsSignedOrHasLeft(sheet));
}
