using System.CommandLine;
using EditionRegister.Domain.Chains;

namespace EditionRegister.Cli;

/// <summary><c>edreg away</c>: sends sheets somewhere for a time.</summary>
internal static class AwayCommand
{
    private static readonly Dictionary<string, MoveKind> Kinds = new(StringComparer.Ordinal)
    {
        ["framer"] = MoveKind.AtFramer,
        ["photographer"] = MoveKind.AtPhotographer,
        ["conservator"] = MoveKind.AtConservator,
        ["transit"] = MoveKind.InTransit,
        ["approval"] = MoveKind.OnApproval,
    };

    public static Command Create(CommandContext context)
    {
        var kind = Arg.Word("FOR", [.. Kinds.Keys], "What they are away for.");
        ChooserOptions chooser = new();
        var options = new GoingOptions("--with", "Who has them: the framer, the carrier, whoever looks at them. Else nobody knows.").Place().Until().Agreement();
        CommandWithExample command = new("away", "Sends sheets away for a time: to a framer, a photographer or a conservator, with a carrier, or on approval to somebody who may buy.", "edreg away framer --edition 3 --sheets 2 --with \"Corner Frames\"") { kind };
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (to, what) = (options.To(line), Kinds[line.GetRequiredValue(kind)]);

            return what == MoveKind.OnApproval && to.With is null
                ? throw new WrongUsageException("Say who has them on approval: --with.")
                : GoingOptions.Send(context, register, chooser.Read(line), to, options.Terms(line, what, register));
        }));

        return command;
    }
}
