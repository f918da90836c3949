using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg price</c>: says what sheets are offered for.</summary>
internal static class PriceCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var asking = AmountOption.Create("--asking", "What each is offered for.");
        var currency = CurrencyOption.Create();
        var forSale = Opt.Word("--for-sale", ["by-custom", "yes", "no", "unknown"], "Whether they are for sale; by custom, proofs of some kinds are not.");
        CommandWithExample command = new("price", "Says what sheets are offered for, and whether they are for sale at all.", "edreg price --edition 3 --sheets 1-12 --asking 180 --currency EUR");
        chooser.AddTo(command);
        command.Add(asking);
        command.Add(currency);
        command.Add(forSale);

        command.SetAction(line => context.Record(line, register =>
        {
            var money = line.GetValue(currency) ?? register.Settings.Currency;
            var (price, word) = (asking.Read(line, money), line.GetValue(forSale));

            if (price is null && word is null)
            {
                throw new WrongUsageException("Nothing is said of the sheets: give --asking or --for-sale.");
            }

            var sheets = register.PriceImpressions.Run(chooser.Read(line), price, money, word);

            return new Recorded(SheetSaid.Priced(sheets, price, money, word), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.Amount("asking", price, money);
                json.WriteString("currency", price is null ? null : money);
                json.WriteString("for_sale", word);
            });
        }));

        return command;
    }
}
