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
        var material = Opt.Text("--material", "TEXT", "What it is made of.");
        var reduction = Opt.Flag("--reduction", "It is cut away in printing, colour by colour.");
        var notReduction = Opt.Flag("--not-reduction", "It is not. Without either word nobody knows.");
        var made = Opt.Date("--made", "When it was made.");
        CommandWithExample command = new("add", "Records a block, plate, stone, screen or stencil that a work is printed from.", "edreg matrix add 3 --what block --material lino --reduction") { work, what, material, reduction, notReduction, made };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            var matrixId = register.RecordMatrix.Run(id, line.GetRequiredValue(what)!, line.GetValue(material), Reduction(line.GetValue(reduction), line.GetValue(notReduction)), line.GetValue(made) ?? RecordedDate.None);
            var printed = register.LookAround.Work(id);
            var matrix = printed.Matrices.First(found => found.Id == matrixId);

            return new Recorded(BenchSaid.Recorded(printed, matrix), json => MatrixJson.Write(json, matrix));
        }));

        return command;
    }

    private static string Reduction(bool isOne, bool isNone) =>
        isOne && isNone ? throw new WrongUsageException("--reduction and --not-reduction exclude each other.")
        : isOne ? "yes"
        : isNone ? "no"
        : "unknown";
}
