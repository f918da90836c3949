using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock list</c>: stock-takes, deliveries and returns, newest first.</summary>
internal static class StockListCommand
{
    private static readonly Column[] Columns = [new("no.", IsRight: true), new("what"), new("place"), new("when"), new("came to"), new("now"), new("note")];

    public static Command Create(CommandContext context)
    {
        var place = Arg.PerhapsText("PLACE", "Only those of this place.");
        CommandWithExample command = new("list", "Lists stock-takes, deliveries and returns, newest first, and whether anything is open still.", "edreg stock list") { place };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var takes = register.LookAround.StockTakes(line.GetValue(place));
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, takes.Select(seen => (string[])
                        [Counted.Figure(seen.Take.Id), seen.Take.Occasion, seen.Path, seen.Take.Taken.ToString(), StockSaid.Counts(seen), StockSaid.Open(seen), seen.Take.Note ?? ""]));
                    printer.Line($"{Counted.Figure(takes.Count)} in all.");
                },
                json: json => json.Each("stock_takes", takes, seen => StockPage.Short(json, seen)));
        }));

        return command;
    }
}
