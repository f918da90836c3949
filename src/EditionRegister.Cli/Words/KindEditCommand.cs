using System.CommandLine;
using EditionRegister.Domain.Words;

namespace EditionRegister.Cli;

/// <summary><c>edreg kind edit</c>: changes a kind of numbering of the register's own.</summary>
internal static class KindEditCommand
{
    public static Command Create(CommandContext context)
    {
        var word = Arg.Text("WORD", "Which kind.");
        KindOptions options = new();
        CommandWithExample command = new("edit", "Changes a kind of the register's own; once a numbering is of it, only its name and whether it is for sale.", "edreg kind edit lettered --for-sale no") { word };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            register.EditKind.Run(line.GetRequiredValue(word), new KindCorrection
            {
                Mark = line.GetValue(options.Mark),
                Name = line.GetValue(options.Name),
                InSize = KindOptions.Yes(line.GetValue(options.InSize)),
                InTotal = KindOptions.Yes(line.GetValue(options.InTotal)),
                ForSale = KindOptions.Yes(line.GetValue(options.ForSale)),
            });
            var kind = register.LookAround.OwnWords().Kind(line.GetRequiredValue(word))!;

            return new Recorded(WordsSaid.Kind("changed", kind), json => KindJson.Write(json, kind));
        }));

        return command;
    }
}
