using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Chains;

/// <summary>Why a sheet cannot have gone, or been sold, so.</summary>
public static class ChainRefusals
{
    public static RefusedException BeforePrinted(Impression sheet, RecordedDate date, RecordedDate printed) =>
        new("before-printed", $"{sheet.ShownCode} was printed {printed}, after {date}. Nothing was changed. Correct the date.");

    public static RefusedException BeforeLastLink(Impression sheet, RecordedDate date, string what, RecordedDate last) =>
        new("before-last-link", $"{sheet.ShownCode} was {what} on {last}, after {date}, and a chain runs forwards. Nothing was changed. Correct the date.");

    public static RefusedException Gone(Impression sheet) =>
        new("sheet-is-gone", $"{sheet.ShownCode} is recorded as gone for good. Nothing was changed. Look whether it is another sheet.");

    public static RefusedException ThereAlready(Impression sheet, string where) =>
        new("is-there-already", $"{sheet.ShownCode} is there already: {where}. Nothing was changed. Name another place, or look whether it is another sheet.");

    public static RefusedException WithSomeone(Impression sheet, string holder) =>
        new("is-with-someone", $"{sheet.ShownCode} is with {holder}, so it cannot be put away here. Nothing was changed. Record its return first with `edreg return`.");

    public static RefusedException NotWith(Impression sheet, string holder, string where) =>
        new("not-with-them", $"{sheet.ShownCode} is not with {holder}, so it cannot come back from there: it is {where}. Nothing was changed. Look whether it is another sheet, or record first how it got there.");

    public static RefusedException NotAway(Impression sheet, string where) =>
        new("not-away", $"{sheet.ShownCode} is not away: it is {where}. Nothing was changed. Only what someone else has can be returned.");

    public static RefusedException NotTheirs(Impression sheet, string seller, string owner) =>
        new("not-theirs-to-sell", $"{sheet.ShownCode} does not belong to {seller}: it belongs to {owner}. Nothing was changed. Name the owner as the one it passes from, and whoever sold it for them with --agent; or look whether it is another sheet.");

    public static RefusedException SoldAlready(Impression sheet, string owner) =>
        new("sold-already", $"{sheet.ShownCode} is no longer the maker's: it belongs to {owner}. Nothing was changed. If the owner passed it on, name the owner with --seller; with --from where it was given, exchanged or bequeathed.");

    public static RefusedException ToThemselves(Impression sheet, string owner) =>
        new("sold-to-its-owner", $"{sheet.ShownCode} belongs to {owner} already. Nothing was changed. Name another buyer.");

    public static RefusedException FirstLinkStays(Impression sheet) =>
        new("first-link-stays", $"{sheet.ShownCode} has only the first step of that chain, and that one stays. Nothing was changed. `edreg show {sheet.ShownCode}` shows both of its chains.");

    public static RefusedException WentOn(Impression sheet) =>
        new("chain-went-on", $"{sheet.ShownCode} has gone on since you looked: another step is now the last of that chain. Nothing was changed. `edreg show {sheet.ShownCode}` shows both of its chains.");

    public static RefusedException NetAbovePrice() =>
        new("net-above-price", "What the owner receives is more than the price. Nothing was changed. Give the net price as a part of the price.");
}
