using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg matrix add</c>: records what a work is printed from.</summary>
internal static class MatrixAddCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var what = Opt.Word("--what", MatrixDeeds.Kinds, "What it is.");
        what.Required = true;
        MatrixOptions options = new();
        CommandWithExample command = new("add", "Records a block, plate, stone, screen or stencil that a work is printed from, and gives it a code of its own.", "edreg matrix add 3 --what block --part key --material lino --place \"Drawer 5\"") { work, what };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            NewMatrix said = new()
            {
                What = line.GetRequiredValue(what)!,
                Part = options.Part(line),
                Material = options.Material(line),
                Reduction = options.Reduction(line) ?? "unknown",
                Made = options.Made(line) ?? RecordedDate.None,
            };
            var matrixId = register.RecordMatrix.Run(id, said, options.Place(line), options.Keeper(line));
            var printed = register.LookAround.Work(id);
            var matrix = printed.Matrices.First(found => found.Id == matrixId);

            return new Recorded(BenchSaid.Recorded(printed, matrix), json => MatrixJson.Write(json, printed, matrix));
        }));

        return command;
    }
}
