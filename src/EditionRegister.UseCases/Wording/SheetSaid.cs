using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was done to some sheets, in one sentence, said alike by commands and rooms.</summary>
public static class SheetSaid
{
    public static string PutAway(int sheets, string path, RecordedDate day) => $"{Counted.Sheets(sheets)} put away in {path}, {day}.";

    /// <param name="sheets">How many.</param>
    /// <param name="to">To whom.</param>
    /// <param name="day">When.</param>
    /// <param name="until">Until when, if known.</param>
    /// <param name="share">Their share in hundredths of a per cent, or null.</param>
    /// <param name="agreement">The agreement under which they go, or null.</param>
    public static string Consigned(int sheets, string to, RecordedDate day, RecordedDate until, int? share, string? agreement = null) =>
        $"{Counted.Sheets(sheets)} consigned to {to}, {day}{(until.IsKnown ? $", until {until}" : "")}{(share is { } known ? $", their share {Counted.Share(known)}" : "")}{(agreement is null ? "" : $", under “{agreement}”")}.";

    public static string Returned(int sheets, string? from, string? path, RecordedDate day) =>
        $"{Counted.Sheets(sheets)} returned{(from is null ? "" : $" from {from}")}{(path is null ? "" : $" and put away in {path}")}, {day}.";

    /// <param name="sheets">How many.</param>
    /// <param name="buyer">To whom; null is a buyer not known.</param>
    /// <param name="price">Minor units for each, or null.</param>
    /// <param name="currency">ISO 4217.</param>
    /// <param name="day">When.</param>
    /// <param name="isResale">By an owner who had not made them.</param>
    public static string Sold(int sheets, string? buyer, long? price, string? currency, RecordedDate day, bool isResale = false) =>
        $"{Counted.Sheets(sheets)} sold to {buyer ?? "a buyer not known"}{(PricesShown.Show(price, currency) is { } shown ? $" for {shown}{Each(sheets)}" : "")}, {day}.{(isResale && price > 0 ? $" {MovesSaid.ResaleRight}" : "")}";

    public static string TakenBack(int sheets, bool move, bool transfer) =>
        $"{Counted.Sheets(sheets)}: {(move && transfer ? "last move and transfer" : move ? "last move" : "last transfer")} taken back.";

    /// <summary>2 sheets: “wiped in ochre”. Null takes it back.</summary>
    public static string Varied(int sheets, string? variant) => $"{Counted.Sheets(sheets)}: {(variant is null ? "variant taken back" : $"“{variant.Trim()}”")}.";

    public static string Dedicated(int sheets, string? dedication) => $"{Counted.Sheets(sheets)}: {(dedication is null ? "dedication taken back" : $"dedicated “{dedication.Trim()}”")}.";

    /// <param name="ghost">Its code.</param>
    /// <param name="print">The code of the sheet pulled before it; null takes it back.</param>
    public static string Ghost(string ghost, string? print) => print is null ? $"{ghost} is no ghost any more." : $"{ghost} recorded as the ghost of {print}.";

    /// <param name="work">The work as it is now.</param>
    /// <param name="old">The replaced sheet as it was before.</param>
    /// <param name="spare">The sheet that has its number now.</param>
    public static string Replaced(Work work, Impression old, Impression spare)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(spare);
        var pencil = Replacement.IsDestroyed(old) || string.IsNullOrWhiteSpace(old.Pencilled) ? "" : $" Take the {old.Pencilled.Trim()} off {old.ShownCode}: the register says so now.";
        var certificate = old.ValidCertificate is { } valid ? $" Certificate {valid.Serial} is withdrawn: ask for it back." : "";

        return $"{spare.ShownCode} takes the place of {old.ShownCode} as {work.NumberingOf(spare)?.Spell(spare.Number)} of {Called.Work(work)}.{pencil}{certificate}";
    }

    public static string Inscribed(int sheets) => $"{Counted.Sheets(sheets)} inscribed.";

    /// <param name="sheets">How many.</param>
    /// <param name="asking">Minor units, or null where the price stayed as it was.</param>
    /// <param name="currency">ISO 4217.</param>
    /// <param name="forSale">The word, or null where that stayed as it was.</param>
    public static string Priced(int sheets, long? asking, string? currency, string? forSale)
    {
        string?[] said = [asking is null ? null : $"asking price {PricesShown.Show(asking, currency)}{Each(sheets)}", forSale is null ? null : $"for sale {Called.Plain(forSale)}"];

        return $"{Counted.Sheets(sheets)}: {string.Join(", ", said.OfType<string>())}.";
    }

    private static string Each(int sheets) => sheets > 1 ? " each" : "";
}
