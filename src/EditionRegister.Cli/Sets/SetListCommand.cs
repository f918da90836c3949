using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg set list</c>: every set there is.</summary>
internal static class SetListCommand
{
    private static readonly Column[] Columns = [new("work", IsRight: true), new("title"), new("form"), new("parts", IsRight: true), new("signed on"), new("copies")];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists the sets of prints, and how many copies of each are gathered.", "edreg set list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var sets = register.LookAround.Sets();
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, sets.Select(seen => (string[])
                    [
                        Counted.Figure(seen.Work.Id), seen.Work.ShownTitle, Domain.Sets.SetForm.NameOf(seen.Set.Form), Counted.Figure(seen.Set.Parts.Count), seen.Set.SignedOn, SetsSaid.HowWhole(seen),
                    ]));
                    printer.Line($"{Counted.Of(sets.Count, "set")}.");
                },
                json: json => json.Each("sets", sets, seen => SetJson.WriteHead(json, seen)));
        }));

        return command;
    }
}
