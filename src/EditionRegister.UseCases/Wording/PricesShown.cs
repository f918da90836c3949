using System.Globalization;
using EditionRegister.Domain.Prices;

namespace EditionRegister.UseCases.Wording;

/// <summary>Amounts of the register as they are shown; what damage left without a currency is shown as it stands.</summary>
public static class PricesShown
{
    /// <summary>180.00 EUR; null where there is none.</summary>
    public static string? Show(long? minorUnits, string? currency) => Amount(minorUnits, currency) is { } amount ? $"{amount} {currency}".TrimEnd() : null;

    /// <summary>180.00; null where there is none.</summary>
    public static string? Amount(long? minorUnits, string? currency) =>
        minorUnits is not { } minor ? null
        : Math.Abs((decimal)minor) <= Money.Largest && Money.TryParse("0", currency, out var nothing) && nothing.Currency == currency ? new Money(minor, currency).Amount
        : minor.ToString(CultureInfo.InvariantCulture);
}
