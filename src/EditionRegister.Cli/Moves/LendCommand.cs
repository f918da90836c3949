using System.CommandLine;
using EditionRegister.Domain.Chains;

namespace EditionRegister.Cli;

/// <summary><c>edreg lend</c>: lends sheets.</summary>
internal static class LendCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var options = new GoingOptions("--to", "To whom: a name or number of the address book.").WhoIsNeeded().Place().Until().Agreement().Insured();
        CommandWithExample command = new("lend", "Lends sheets: they are to come back, and stay their owner's.", "edreg lend --edition 3 --sheets 2 --to \"Harbour Museum\" --until 2027-03-31 --insured 240");
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register => GoingOptions.Send(context, register, chooser.Read(line), options.To(line), options.Terms(line, MoveKind.Lent, register))));

        return command;
    }
}
