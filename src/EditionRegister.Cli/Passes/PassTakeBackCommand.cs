using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass take-back</c>: takes back the last pass of a run.</summary>
internal static class PassTakeBackCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        CommandWithExample command = new("take-back", "Takes back the last pass of a print run, where it was recorded by mistake; the logbook keeps both.", "edreg pass take-back 3") { work, run };

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, ordinal) = (line.GetValue(work)!.Value, line.GetValue(run) ?? 1);
            var pass = register.TakePassBack.Run(id, ordinal);
            var found = register.LookAround.Work(id);

            return new Recorded(BenchSaid.TakenBack(found, found.Runs.First(one => one.Ordinal == ordinal), pass), json =>
            {
                json.WriteNumber("work", id);
                json.WriteNumber("run", ordinal);
                json.WriteNumber("pass", pass);
            });
        }));

        return command;
    }
}
