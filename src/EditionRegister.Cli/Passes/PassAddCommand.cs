using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass add</c>: records the next pass of a print run.</summary>
internal static class PassAddCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        PassOptions options = new();
        CommandWithExample command = new("add", "Records the next pass of a print run; counts that follow from the others need not be given.", "edreg pass add 3 --matrix key=II --colour red --out 13 --spoiled slur=1") { work, run };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, ordinal) = (line.GetValue(work)!.Value, line.GetValue(run) ?? 1);

            return PassJson.Recorded(register, id, ordinal, register.RecordPass.Run(id, ordinal, options.Read(line)), BenchSaid.Recorded);
        }));

        return command;
    }
}
