using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg stock</c>: what lies in a place against what should, what is handed over and what comes back.</summary>
internal static class StockCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("stock", "Takes stock of places by scanned codes, and counts what is handed over and what comes back.", "edreg stock take \"Drawer 2\" --file scanned.txt")
    {
        StockTakeCommand.Create(context),
        StockSettleCommand.Create(context),
        StockDeliverCommand.Create(context),
        StockReturnCommand.Create(context),
        StockListCommand.Create(context),
        StockShowCommand.Create(context),
    };
}
