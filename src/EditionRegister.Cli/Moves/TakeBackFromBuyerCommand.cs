using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary><c>edreg take-back-from-buyer</c>: the buyer gives sheets back.</summary>
internal static class TakeBackFromBuyerCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var refund = AmountOption.Create("--refund", "What was given back for each.");
        var currency = CurrencyOption.Create();
        var here = Opt.Flag("--here", "They came along: they are with the maker again.");
        var place = Opt.Text("--place", "PLACE", "They came along, and were put here.");
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("take-back-from-buyer", "Records that the buyer gave sheets back: they belong again to whoever sold them. A sale that never was is taken back with `edreg take-back`.", "edreg take-back-from-buyer --edition 3 --sheets 6 --refund 210 --place \"Drawer 3\"") { refund, currency, here, place, date, note };
        chooser.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var money = line.GetValue(currency) ?? register.Settings.Currency;
            var back = refund.Read(line, money);
            var sheets = register.TakeBackFromBuyer.Run(chooser.Read(line), line.GetValue(place), new BuyersReturn
            {
                Date = line.GetValue(date) ?? RecordedDate.None,
                Refund = back,
                Currency = money,
                IsHere = line.GetValue(here),
                Note = line.GetValue(note),
            });
            var day = context.DayOf(line.GetValue(date));

            return new Recorded(MovesSaid.TakenBackFromBuyer(sheets, back, money, day), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.Amount("refund", back, money);
                json.WriteString("currency", back is null ? null : money);
                json.Date("date", day);
            });
        }));

        return command;
    }
}
