using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace EditionRegister.Domain.Prices;

/// <summary>An amount in whole minor units of one currency; amounts of different currencies never meet.</summary>
public sealed record Money
{
    /// <summary>Shown next to every field and in every message that asks for an amount.</summary>
    public const string Form = "180 or 180.50, with a point and without separators of thousands";

    /// <summary>The largest amount in minor units that JSON carries exactly, 2^53 - 1.</summary>
    public const long Largest = (1L << 53) - 1;

    /// <exception cref="ArgumentException">The currency is not three capital letters, or the amount is beyond <see cref="Largest"/>.</exception>
    public Money(long minorUnits, string currency)
    {
        if (!Currencies.IsCode(currency))
        {
            throw new ArgumentException("A currency is three capital letters as in ISO 4217.", nameof(currency));
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(minorUnits, Largest);
        ArgumentOutOfRangeException.ThrowIfLessThan(minorUnits, -Largest);

        MinorUnits = minorUnits;
        Currency = currency;
    }

    /// <summary>Cents for EUR, yen for JPY, fils for KWD.</summary>
    public long MinorUnits { get; }

    /// <summary>ISO 4217, in capitals.</summary>
    public string Currency { get; }

    /// <summary>For machines: a point, every decimal of the currency, nothing else (<c>180.00</c>).</summary>
    public string Amount
    {
        get
        {
            var digits = Currencies.MinorDigits(Currency);

            return (MinorUnits / Currencies.MinorUnitsPerUnit(Currency)).ToString("F" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        }
    }

    /// <summary>Reads an amount with a point before its decimals. A comma, a space or more decimals than the currency has are not read.</summary>
    /// <param name="amount">The amount alone, without its currency.</param>
    /// <param name="currency">ISO 4217, in capitals or small letters.</param>
    /// <param name="value">The amount, or null where it was not read.</param>
    public static bool TryParse(string? amount, string? currency, [NotNullWhen(true)] out Money? value)
    {
        value = null;
        var code = Currencies.InCapitals(currency?.Trim(' ') ?? "");
        var text = (amount ?? "").Trim(' ');

        if (!Currencies.IsCode(code) || !Currencies.HasForm(text, Currencies.MinorDigits(code)))
        {
            return false;
        }

        if (decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var units)
            && Math.Abs(units) <= Largest / Currencies.MinorUnitsPerUnit(code))
        {
            value = new Money((long)(units * Currencies.MinorUnitsPerUnit(code)), code);
        }

        return value is not null;
    }

    /// <summary>For people: <c>180.00 EUR</c>, the same in every language.</summary>
    public override string ToString() => $"{Amount} {Currency}";
}
