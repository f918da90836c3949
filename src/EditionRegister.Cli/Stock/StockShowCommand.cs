using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock show</c>: one stock-take as it stands by now.</summary>
internal static class StockShowCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("N", "The number of the stock-take, delivery or return.");
        CommandWithExample command = new("show", "Shows one stock-take, delivery or return: what was found, and what is settled by now.", "edreg stock show 4") { id };
        command.SetAction(line => context.Look(line, (register, printer) => StockPage.Print(printer, register.LookAround.StockTake(line.GetValue(id)!.Value))));

        return command;
    }
}
