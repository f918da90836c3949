using System.CommandLine;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock settle</c>: puts the register right by what a stock-take found.</summary>
internal static class StockSettleCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("N", "The number of the stock-take.");
        var strangers = Opt.Word("--strangers", ["put-away", "leave"], "What was found where the register did not have it: it is put away there, or left as it is.");
        var missing = Opt.Word("--missing", ["unknown", "leave"], "What was not found: nobody knows where it is, or it is left as it is.");
        var codes = Opt.Text("--codes", "CODES", "Only these, parted by commas. Else everything that is open.");
        var date = Opt.Date("--date", "When. Else the day of the stock-take.");
        CommandWithExample command = new("settle", "Puts the register right by what a stock-take found: only what you accept, all of it at once.", "edreg stock settle 4 --strangers put-away --missing unknown") { id, strangers, missing, codes, date };

        command.SetAction(line => context.Record(line, register =>
        {
            StockSettlement settlement = new()
            {
                PutStrangersAway = line.GetValue(strangers) == "put-away",
                LoseMissing = line.GetValue(missing) == "unknown",
                Only = line.GetValue(codes) is { } typed ? ScanList.OfTyped(typed) : null,
                Date = line.GetValue(date),
            };

            if (settlement is { PutStrangersAway: false, LoseMissing: false })
            {
                throw new WrongUsageException("Say what is accepted: --strangers put-away, --missing unknown, or both.");
            }

            var settled = register.SettleStock.Run(line.GetValue(id)!.Value, settlement);
            var seen = register.LookAround.StockTake(line.GetValue(id)!.Value);
            var day = settlement.Date ?? (seen.Take.Taken.IsKnown ? seen.Take.Taken : context.DayOf(null));

            return new Recorded(StockSaid.Settled(seen, settled, day), json =>
            {
                json.WriteNumber("stock_take", seen.Take.Id);
                json.WriteNumber("put_away", settled.PutAway);
                json.WriteNumber("unknown", settled.Lost);
                json.WriteNumber("open", settled.Open);
                json.Date("date", day);
            });
        }));

        return command;
    }
}
