using System.CommandLine;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary><c>edreg matrix state</c>: records that a matrix came to another state.</summary>
internal static class MatrixStateCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var name = Arg.Text("STATE", "What the state is called: II.");
        var which = MatrixOptions.Which();
        var reached = Opt.Date("--reached", "When it was reached. Else not known.");
        var note = Opt.Text("--note", "TEXT", "What was cut, bitten or reworked.");
        CommandWithExample command = new("state", "Records that a block, plate, stone or screen came to another state.", "edreg matrix state 3 II --matrix key --reached 2026-02-10 --note \"sky cleared\"") { work, name, which, reached, note };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            var matrixId = register.ReachMatrixState.Run(id, line.GetValue(which), line.GetRequiredValue(name), line.GetValue(reached) ?? RecordedDate.None, line.GetValue(note));
            var printed = register.LookAround.Work(id);
            var matrix = printed.Matrices.First(found => found.Id == matrixId);

            return new Recorded(BenchSaid.Reached(printed, matrix, matrix.NewestState!), json => MatrixJson.Write(json, printed, matrix));
        }));

        return command;
    }
}
