using System.CommandLine;
using EditionRegister.Domain.Chains;

namespace EditionRegister.Cli;

/// <summary><c>edreg exhibit</c>: hangs sheets in a show.</summary>
internal static class ExhibitCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var options = new GoingOptions("--with", "Who has them there.").Place().Until().Agreement();
        var hung = Opt.Id("--in-show", "a show", "The show they hang in; its place, host and last day count where nothing else is said.");
        CommandWithExample command = new("exhibit", "Hangs sheets in a show or another place; a sold sheet may hang too.", "edreg exhibit --edition 3 --sheets 4-6 --in-show 2") { hung };
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (to, show) = (options.To(line), line.GetValue(hung));

            return show is null && to.Place is null && to.With is null
                ? throw new WrongUsageException("Say where they hang: --in-show, --place or --with.")
                : GoingOptions.Send(context, register, chooser.Read(line), to, options.Terms(line, MoveKind.Exhibited, register) with { Show = show });
        }));

        return command;
    }
}
