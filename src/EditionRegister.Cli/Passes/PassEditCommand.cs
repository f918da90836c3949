using System.CommandLine;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.Cli;

/// <summary><c>edreg pass edit</c>: puts right what was recorded of a pass.</summary>
internal static class PassEditCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var pass = Arg.Id("PASS", "Its place in the run.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        PassOptions options = new();
        CommandWithExample command = new("edit", "Puts right what was recorded of a pass; what is not said stays, and it must balance again.", "edreg pass edit 3 2 --out 12 --spoiled slur=2") { work, pass, run };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, ordinal, at) = (line.GetValue(work)!.Value, line.GetValue(run) ?? 1, (int)Math.Min(int.MaxValue, line.GetValue(pass)!.Value));
            var correction = options.Read(line);

            if (correction == new PassTyped())
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --out, --colour or another option.");
            }

            register.EditPass.Run(id, ordinal, at, correction);

            return PassJson.Recorded(register, id, ordinal, at, BenchSaid.PutRight);
        }));

        return command;
    }
}
