using System.CommandLine;
using EditionRegister.Domain.Words;

namespace EditionRegister.Cli;

/// <summary><c>edreg kind add</c>: makes a kind of numbering of the register's own.</summary>
internal static class KindAddCommand
{
    public static Command Create(CommandContext context)
    {
        var word = Arg.Text("WORD", "What the register calls it, for ever: small letters and hyphens.");
        KindOptions options = new();
        options.Mark.Required = true;
        options.Name.Required = true;
        CommandWithExample command = new("add", "Makes a kind of numbering of the register's own.", "edreg kind add lettered --mark L.P. --name \"lettered proof\" --for-sale yes") { word };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            register.AddKind.Run(new NewKind
            {
                Word = line.GetRequiredValue(word),
                Mark = line.GetRequiredValue(options.Mark)!,
                Name = line.GetRequiredValue(options.Name)!,
                InSize = KindOptions.Yes(line.GetValue(options.InSize)) ?? false,
                InTotal = KindOptions.Yes(line.GetValue(options.InTotal)) ?? true,
                ForSale = KindOptions.Yes(line.GetValue(options.ForSale)) ?? false,
            });
            var kind = register.LookAround.OwnWords().Kind(line.GetRequiredValue(word))!;

            return new Recorded(WordsSaid.Kind("made", kind), json => KindJson.Write(json, kind));
        }));

        return command;
    }
}
