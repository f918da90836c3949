using System.CommandLine;
using EditionRegister.Domain.Prices;

namespace EditionRegister.Cli;

/// <summary>Amounts and the currency they are in: named with --currency, else the register's own.</summary>
internal sealed class CurrencyOption() : Option<string?>("--currency")
{
    public const string Form = "a currency of ISO 4217 in three letters, such as EUR";

    public static CurrencyOption Create() => new()
    {
        HelpName = "CODE",
        Description = "The currency of the amounts, in three letters. Else the one register.toml names.",
        CustomParser = Given.One<string?>(TryRead!, Form),
    };

    public static bool TryRead(string text, out string currency)
    {
        var isCode = Money.TryParse("1", text, out var one);
        currency = one?.Currency ?? "";

        return isCode;
    }
}

/// <summary>An amount of nothing or more. How many decimals it may have is known once its currency is.</summary>
internal sealed class AmountOption(string name) : Option<string?>(name)
{
    public static AmountOption Create(string name, string description) => new(name) { HelpName = "AMOUNT", Description = description };

    /// <returns>Minor units, or null where no amount is given.</returns>
    /// <exception cref="WrongUsageException">No amount in that currency.</exception>
    public long? Read(ParseResult line, string currency) => line.GetValue(this) switch
    {
        null => null,
        var text when Money.TryParse(text, currency, out var amount) && amount.MinorUnits >= 0 => amount.MinorUnits,
        var text => throw new WrongUsageException($"{Name} takes an amount in {currency} such as {Money.Form}, and “{text}” is none."),
    };
}
