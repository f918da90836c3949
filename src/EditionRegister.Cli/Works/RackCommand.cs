using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg rack</c>: lists the print runs whose sheets are drying.</summary>
internal static class RackCommand
{
    private static readonly Column[] Columns = [new("work", IsRight: true), new("title"), new("run", IsRight: true), new("sheets", IsRight: true), new("ready")];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("rack", "Lists the print runs whose sheets lie on the rack, not sorted yet, and from when they are dry.", "edreg rack");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var (rack, today) = (register.ListRack.Run(), register.ListRack.Today);
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, rack.Select(one => (string[])[Counted.Figure(one.Work.Id), one.Work.ShownTitle, Counted.Figure(one.Run.Ordinal), Counted.Figure(one.Sheets), RackText.When(one.Run.Ready, today)]));
                    printer.Line($"{Counted.Of(rack.Count, "print run")} on the rack.");
                },
                json: json => json.Each("rack", rack, one =>
                {
                    json.WriteNumber("work", one.Work.Id);
                    json.WriteString("title", one.Work.Title);
                    json.WriteNumber("run", one.Run.Ordinal);
                    json.WriteNumber("sheets", one.Sheets);
                    json.Date("ready", one.Run.Ready);
                    json.WriteString("when", RackText.When(one.Run.Ready, today));
                }));
        }));

        return command;
    }
}
