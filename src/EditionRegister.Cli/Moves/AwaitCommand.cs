using System.CommandLine;
using EditionRegister.Domain.Chains;

namespace EditionRegister.Cli;

/// <summary><c>edreg await</c>: sheets wait for their owner to collect them.</summary>
internal static class AwaitCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var options = new GoingOptions("--with", "Who keeps them until then. Else they stay where they are.").Place().Until();
        CommandWithExample command = new("await", "Records that sheets, sold or given, wait to be collected by their owner.", "edreg await --edition 3 --sheets 6 --until 2026-12-20");
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register => GoingOptions.Send(context, register, chooser.Read(line), options.To(line), options.Terms(line, MoveKind.AwaitingCollection, register))));

        return command;
    }
}
