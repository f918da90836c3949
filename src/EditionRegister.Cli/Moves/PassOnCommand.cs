using System.CommandLine;
using EditionRegister.Domain.Chains;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass-on</c>: the consignee passes sheets on to another.</summary>
internal static class PassOnCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var options = new GoingOptions("--to", "To whom: a name or number of the address book.").WhoIsNeeded().Place().Until().Rate().Agreement();
        CommandWithExample command = new("pass-on", "Records that the consignee passed sheets on to somebody else to sell; the first consignee still answers for them.", "edreg pass-on --edition 3 --sheets 7 --to \"Inland Prints\" --rate 20");
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register => GoingOptions.Send(context, register, chooser.Read(line), options.To(line), options.Terms(line, MoveKind.SubConsigned, register))));

        return command;
    }
}
