using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition terms</c>: every word for what can be the matter with a sheet.</summary>
internal static class ConditionTermsCommand
{
    private static readonly Column[] Columns = [new("term"), new("name"), new("what one sees")];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("terms", "Lists the words for what can be the matter with a sheet, and what they mean.", "edreg condition terms");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var terms = register.LookAround.ConditionTerms();
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, terms.Select(term => (string[])[term.Word, term.Name, term.Meaning.Length > 0 ? term.Meaning : "a term of this register's own"]));
                    printer.Line();

                    foreach (var care in ConditionSaid.Cares(terms.Select(term => term.Word)))
                    {
                        printer.Line(care);
                    }

                    printer.Line(ConditionSaid.Caution);
                },
                json: json => json.Each("terms", terms, term =>
                {
                    json.WriteString("term", term.Word);
                    json.WriteString("name", term.Name);
                    json.WriteString("meaning", term.Meaning);
                    json.WriteString("care", term.Care);
                }));
        }));

        return command;
    }
}
