using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg kind list</c>: every kind of numbering, with what it counts in.</summary>
internal static class KindListCommand
{
    private static readonly Column[] Columns = [new("kind"), new("mark"), new("name"), new("in size"), new("in total"), new("for sale"), new("own")];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists every kind of numbering, with what it counts in.", "edreg kind list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var kinds = register.LookAround.OwnWords().AllKinds;
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, kinds.Select(kind => (string[])[kind.Word, kind.Mark, kind.Name, YesNo(kind.InSize), YesNo(kind.InTotal), YesNo(kind.ForSale), YesNo(kind.IsOwn)]));
                    printer.Line($"{Counted.Of(kinds.Count, "kind")}.");
                },
                json: json => json.Each("kinds", kinds, kind => KindJson.Write(json, kind)));
        }));

        return command;
    }

    private static string YesNo(bool yes) => yes ? "yes" : "no";
}
