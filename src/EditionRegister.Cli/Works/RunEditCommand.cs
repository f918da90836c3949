using System.CommandLine;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg run edit</c>: puts right what was counted and measured of a print run.</summary>
internal static class RunEditCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("WORK", "The number of the work.");
        var run = Opt.Some("--run", "The print run. Else 1.");
        RunMeasures measures = new();
        var cancellationProof = Opt.Word("--cancellation-proof", ["yes", "no"], "Whether it is the proof from the cancelled matrix.");
        CommandWithExample command = new("edit", "Puts right what was counted and measured of a print run; the sheets must balance again.", "edreg run edit 3 --started 25 --spoiled 4") { id, run, cancellationProof };
        measures.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var correction = measures.Read(line) with { CancellationProof = line.GetValue(cancellationProof) };

            if (correction == new PrintRunCorrection())
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --started, --paper or another option.");
            }

            var (work, ordinal) = (line.GetValue(id)!.Value, line.GetValue(run) ?? 1);
            register.EditPrintRun.Run(work, ordinal, correction);
            var found = register.LookAround.Work(work);

            return new Recorded(
                BenchSaid.PutRight(found, found.Runs.First(one => one.Ordinal == ordinal)),
                json => json.WriteNumber("work", work));
        }));

        return command;
    }
}
