using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass again</c>: the last pass again, with what is different.</summary>
internal static class PassAgainCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        PassOptions options = new();
        CommandWithExample command = new("again", "Records the next pass as the last one was, with what is different: another ink, say. Counts, date and note are its own.", "edreg pass again 3 --ink \"oil ink, warmer\" --out 12 --spoiled crease=1") { work, run };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, ordinal) = (line.GetValue(work)!.Value, line.GetValue(run) ?? 1);

            return PassJson.Recorded(register, id, ordinal, register.RecordPass.Again(id, ordinal, options.Read(line)), BenchSaid.Recorded);
        }));

        return command;
    }
}
