using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg matrix fate</c>: states what became of a matrix.</summary>
internal static class MatrixFateCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var fate = Arg.Word("FATE", MatrixDeeds.Fates, "What became of it.");
        var matrix = Opt.Id("--matrix", "a matrix", "Which matrix. Needed where the work has several.");
        var date = Opt.Date("--date", "When. Else not known.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var correct = Opt.Flag("--correct", "The fate on record was a mistake.");
        CommandWithExample command = new("fate", "States what became of a block, plate, stone or screen.", "edreg matrix fate 3 cut-away-in-printing --date 2026-02-20") { work, fate, matrix, date, note, correct };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            register.StateMatrixFate.Run(id, line.GetValue(matrix), line.GetRequiredValue(fate), line.GetValue(date) ?? RecordedDate.None, line.GetValue(note), line.GetValue(correct));
            var printed = register.LookAround.Work(id);
            var stated = line.GetValue(matrix) is { } named ? printed.Matrices.First(found => found.Id == named) : printed.Matrices[0];

            return new Recorded(BenchSaid.FateStated(printed, stated), json => MatrixJson.Write(json, stated));
        }));

        return command;
    }
}
