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
        var which = MatrixOptions.Which();
        var date = Opt.Date("--date", "When. Else not known.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var proof = Opt.Text("--proof", "CODE", "The impression that proves it: one pulled from the cancelled plate.");
        var correct = Opt.Flag("--correct", "The fate on record was a mistake.");
        CommandWithExample command = new("fate", "States what became of a block, plate, stone or screen, and which impression proves it.", "edreg matrix fate 3 cut-away-in-printing --date 2026-02-20") { work, fate, which, date, note, proof, correct };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            long? matrix = line.GetValue(which) is { } named ? register.LookAround.MatrixOf(id, named).Id : null;
            register.StateMatrixFate.Run(id, matrix, line.GetRequiredValue(fate), line.GetValue(date) ?? RecordedDate.None, line.GetValue(note), line.GetValue(correct), line.GetValue(proof));
            var printed = register.LookAround.Work(id);
            var stated = matrix is { } meant ? printed.Matrices.First(found => found.Id == meant) : printed.Matrices[0];

            return new Recorded(BenchSaid.FateStated(printed, stated), json => MatrixJson.Write(json, printed, stated));
        }));

        return command;
    }
}
