using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Where one sheet is and whose, as a letter and in words.</summary>
internal static class SheetOnMap
{
    public static (char Letter, string Words) Of(Work work, Impression sheet)
    {
        var place = WhereaboutsDeeds.IsMissing(sheet) ? sheet.Whereabouts[^1].Kind : WhereInWords.Named(sheet.Where ?? Position.Unknown, work.Book);
        var owner = sheet.Whose is { State: "known" } whose ? whose.Person : null;
        var holder = sheet.Where?.Holder;
        var words = owner is null ? $"{place}, owner not known" : IsMaker(work, owner) ? place : $"{place}, belongs to {WhereInWords.PersonNamed(owner, work.Book)}";

        return sheet.Where?.State switch
        {
            "gone" => (NumberMapLetters.Gone, words),
            "placed" or "with" when owner is null && WasSold(sheet) => (NumberMapLetters.Sold, $"{place}, {sheet.Ownership[^1].Kind}, {(sheet.Ownership[^1].Kind == MoveKind.Sold.Word ? "buyer" : "to whom")} not known"),
            "unknown" when owner is null && sheet.Whereabouts is [.., { Kind: "collected" }] => (NumberMapLetters.WithOwner, "with its buyer, not known"),
            "placed" or "with" when owner is not null && !IsMaker(work, owner) => holder == owner ? (NumberMapLetters.WithOwner, place) : (NumberMapLetters.Sold, words),
            "placed" when holder is null || IsMaker(work, holder) => (NumberMapLetters.Here, words),
            "with" when IsMaker(work, holder) => (NumberMapLetters.Here, words),
            "placed" or "with" when holder is not null => (NumberMapLetters.Away, words),
            _ => (NumberMapLetters.Unknown, words),
        };
    }

    private static bool WasSold(Impression sheet) => sheet.Ownership is [.., var last] && MoveKind.Of(last.Kind) is { PassesOn: true };

    private static bool IsMaker(Work work, long? person) => person is not null && work.MakersAndEstate.Any(maker => maker.Id == person);
}
