using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition term</c>: words of the register's own for what can be the matter with a sheet.</summary>
internal static class ConditionTermCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("term", "Adds words of your own for what can be the matter with a sheet.", "edreg condition term add frame-rub") { Add(context) };

    private static CommandWithExample Add(CommandContext context)
    {
        var word = Arg.Text("WORD", "Small letters, figures and hyphens: frame-rub. It stays for good.");
        var name = Opt.Text("--name", "NAME", "As reports show it. Else the word without hyphens.");
        CommandWithExample command = new("add", "Adds a word of your own for what can be the matter with a sheet.", "edreg condition term add frame-rub --name \"rubbed by the frame\"") { word, name };

        command.SetAction(line => context.Record(line, register =>
        {
            var (term, shown) = (line.GetRequiredValue(word), line.GetValue(name));
            register.RecordConditionTerm.Run(term, shown);

            return new Recorded(ConditionSaid.TermAdded(term, shown ?? Called.Plain(term)), json =>
            {
                json.WriteString("term", term);
                json.WriteString("name", shown ?? Called.Plain(term));
            });
        }));

        return command;
    }
}
