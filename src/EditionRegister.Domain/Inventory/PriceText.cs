using EditionRegister.Domain.Prices;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Inventory;

/// <summary>Prices in machine form; what is no money has none.</summary>
internal static class PriceText
{
    public static string? Amount(long? minorUnits, string? currency) => Of(minorUnits, currency)?.Amount;

    /// <summary>What the last sale brought. The currency column speaks of the asking price, so another currency is named here.</summary>
    public static string? Net(Impression impression) =>
        impression.Ownership.LastOrDefault(link => link.Net is not null) is { } sale && Of(sale.Net, sale.Currency) is { } net
            ? net.Currency == impression.AskingCurrency ? net.Amount : net.ToString()
            : null;

    private static Money? Of(long? minorUnits, string? currency) =>
        minorUnits is { } amount && amount is >= 0 and <= Money.Largest && currency is { Length: 3 } code && code.All(char.IsAsciiLetterUpper)
            ? new Money(amount, code)
            : null;
}
