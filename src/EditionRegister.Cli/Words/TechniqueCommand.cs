using System.CommandLine;
using EditionRegister.Domain.Words;

namespace EditionRegister.Cli;

/// <summary><c>edreg technique</c>: the list of techniques that is read in words, and those of the register's own.</summary>
internal static class TechniqueCommand
{
    private static readonly Column[] Columns = [new("technique"), new("name"), new("aat")];

    public static Command Create(CommandContext context) => new CommandWithExample("technique", "Lists the techniques of printmaking that are read in words, and adds others.", "edreg technique list")
    {
        List(context),
        Add(context),
    };

    private static CommandWithExample List(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists every technique, with its id in the Getty Art & Architecture Thesaurus where that was verified.", "edreg technique list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var techniques = register.LookAround.OwnWords().AllTechniques;
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, techniques.Select(technique => (string[])[technique.Word, technique.Name, technique.Aat]));
                    printer.Line($"{Counted.Of(techniques.Count, "technique")}.");
                },
                json: json => json.Each("techniques", techniques, technique =>
                {
                    json.WriteString("technique", technique.Word);
                    json.WriteString("name", technique.Name);
                    json.WriteString("aat", technique.Aat.Length == 0 ? null : technique.Aat);
                }));
        }));

        return command;
    }

    private static CommandWithExample Add(CommandContext context)
    {
        var word = Arg.Text("WORD", "What the register calls it, for ever: small letters and hyphens.");
        var name = Opt.Text("--name", "NAME", "As it is said and written; it is read by this name from then on.");
        name.Required = true;
        var aat = Opt.Text("--aat", "ID", "Its id in the Getty Art & Architecture Thesaurus, looked up there by its label.");
        CommandWithExample command = new("add", "Adds a technique to the list.", "edreg technique add plaster-print --name \"plaster print\"") { word, name, aat };

        command.SetAction(line => context.Record(line, register =>
        {
            NewTechnique technique = new(line.GetRequiredValue(word), line.GetRequiredValue(name)!, line.GetValue(aat));
            register.AddTechnique.Run(technique);

            return new Recorded(WordsSaid.Technique(technique.Word, technique.Name), json =>
            {
                json.WriteString("technique", technique.Word);
                json.WriteString("name", technique.Name.Trim());
                json.WriteString("aat", technique.Aat);
            });
        }));

        return command;
    }
}
