using System.CommandLine;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg matrix edit</c>: puts right what is recorded of a matrix, and says where it now lies.</summary>
internal static class MatrixEditCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var which = MatrixOptions.Which();
        var what = Opt.Word("--what", MatrixDeeds.Kinds, "What it is.");
        var givesCode = Opt.Flag("--give-code", "It was recorded without a code, and is to have one.");
        MatrixOptions options = new();
        CommandWithExample command = new("edit", "Puts right what is recorded of a block, plate, stone or screen, or says where it now lies and who has it.", "edreg matrix edit 3 --matrix key --place \"Drawer 5\"") { work, which, what, givesCode };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            MatrixCorrection correction = new() { What = line.GetValue(what), Part = options.Part(line), Material = options.Material(line), Reduction = options.Reduction(line), Made = options.Made(line) };
            var (id, place, keeper, code) = (line.GetValue(work)!.Value, options.Place(line), options.Keeper(line), line.GetValue(givesCode));

            if (correction == new MatrixCorrection() && (place ?? keeper) is null && !code)
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --part, --place or another option.");
            }

            var matrixId = register.EditMatrix.Run(id, line.GetValue(which), correction, place, keeper, code);
            var printed = register.LookAround.Work(id);
            var matrix = printed.Matrices.First(found => found.Id == matrixId);

            return new Recorded(code ? BenchSaid.CodeGiven(printed, matrix) : BenchSaid.PutRight(printed, matrix), json => MatrixJson.Write(json, printed, matrix));
        }));

        return command;
    }
}
