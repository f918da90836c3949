using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg sell</c>: records that sheets were sold.</summary>
internal static class SellCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        SaleOptions options = new();
        CommandWithExample command = new("sell", "Records that sheets were sold, each for the price given.", "edreg sell --edition 3 --sheets 6 --to \"Inés Vargøy\" --price 210 --collected");
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (choice, people) = (chooser.Read(line), options.People(line));
            var sale = options.Read(line, register.Settings.Currency);
            var sold = register.SellImpressions.Sell(choice, people, sale);
            var sheets = sold.Count;
            var buyer = people.Buyer is { } who ? Names.Of(register, who) : null;
            var day = context.DayOf(sale.Date.IsKnown ? sale.Date : null);

            return new Recorded(SheetSaid.Sold(sheets, buyer, sale.Price, sale.Currency, day, sold.Resold > 0), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("to", buyer);
                json.Amount("price", sale.Price, sale.Currency);
                json.Amount("net", sale.Net, sale.Currency);
                json.WriteString("currency", (sale.Price ?? sale.Net) is null ? null : sale.Currency);
                json.Date("date", day);
                json.WriteBoolean("collected", sale.Collected);
                json.WriteNumber("resold", sold.Resold);
            });
        }));

        return command;
    }
}
