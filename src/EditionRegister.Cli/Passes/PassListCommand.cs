using System.CommandLine;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass list</c>: lists the passes of a print run.</summary>
internal static class PassListCommand
{
    private static readonly Column[] Columns = [new("pass", IsRight: true), new("done"), new("what"), new("sheets"), new("at hand after", IsRight: true), new("who"), new("note")];

    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        CommandWithExample command = new("list", "Lists the passes of a print run, with what was printed from what and what came of the sheets.", "edreg pass list 3") { work, run };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var found = register.LookAround.Work(line.GetValue(work)!.Value);
            var ordinal = line.GetValue(run) ?? 1;
            var meant = found.Runs.FirstOrDefault(one => one.Ordinal == ordinal) ?? throw WorkRefusals.NoSuchRun(found, ordinal);
            var standings = PassBalance.Of(meant);
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, standings.Select(standing => Row(found, standing)));
                    printer.Line($"{Counted.Of(standings.Count, "pass", "passes")}; {RunBalance.Of(found, meant)}.");
                },
                json: json =>
                {
                    json.WriteNumber("work", found.Id);
                    json.WriteNumber("run", meant.Ordinal);
                    json.Each("passes", standings, standing => PassJson.Write(json, found, standing));
                });
        }));

        return command;
    }

    private static string[] Row(Work work, PassStanding standing) =>
    [
        Counted.Figure(standing.Pass.Ordinal), standing.Pass.Done.Text ?? "", PassText.What(work, standing.Pass), PassText.Counts(work, standing.Pass),
        standing.Left is { } left ? Counted.Figure(left) : "not known", string.Join(", ", standing.Pass.People.Select(one => work.Book.NameOf(one.Person))), standing.Pass.Note ?? "",
    ];
}
