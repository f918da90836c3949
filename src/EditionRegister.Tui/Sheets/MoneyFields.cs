using EditionRegister.Domain.Prices;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Sheets;

/// <summary>Money in a form whose currency can be changed in the form itself.</summary>
internal static class MoneyFields
{
    public static Field Currency(string label, string given) => new(label, given)
    {
        IsNeeded = true,
        Form = "three letters, such as EUR, GBP or USD",
        Wrong = typed => IsCurrency(typed) ? null : $"“{typed}” is no currency the register knows: write three letters, such as EUR, GBP or USD.",
    };

    /// <param name="label">How the field is called.</param>
    /// <param name="currency">The field that says in what.</param>
    /// <param name="form">What the amount is.</param>
    /// <param name="given">What stands there at first.</param>
    public static Field Amount(string label, Field currency, string form, string given = "") => new(label, given)
    {
        Form = $"{form}: {Money.Form}",
        Wrong = typed => !IsCurrency(currency.Text) || MinorUnits(typed, currency) >= 0 ? null : $"“{typed}” is no amount in {Of(currency)}: write {Money.Form}.",
    };

    public static string Of(Field currency) => currency.Text.Trim().ToUpperInvariant();

    public static long? MinorUnits(string? typed, Field currency) => Fields.MinorUnits(typed, Of(currency));

    private static bool IsCurrency(string typed) => Money.TryParse("0", typed.Trim().ToUpperInvariant(), out _);
}
