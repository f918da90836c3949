using System.CommandLine;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg matrix list</c>: lists blocks, plates, stones and screens with their states and where they lie.</summary>
internal static class MatrixListCommand
{
    private static readonly Column[] Columns = [new("work"), new("id", IsRight: true), new("what"), new("part"), new("code"), new("states"), new("fate"), new("place")];

    public static Command Create(CommandContext context)
    {
        var work = Arg.PerhapsId("WORK", "Only those of this work.");
        CommandWithExample command = new("list", "Lists blocks, plates, stones and screens with their codes, states, fates and where they lie.", "edreg matrix list 3") { work };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var works = line.GetValue(work) is { } one ? [register.LookAround.Work(one)] : register.LookAround.Works();
            var all = works.SelectMany(found => found.Matrices.Select(matrix => (Work: found, Matrix: matrix))).ToList();
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, all.Select(pair => Row(pair.Work, pair.Matrix)));
                    printer.Line($"{Counted.Of(all.Count, "matrix", "matrices")}.");
                },
                json: json => json.Each("matrices", all, pair =>
                {
                    json.WriteNumber("work", pair.Work.Id);
                    MatrixJson.Write(json, pair.Work, pair.Matrix);
                }));
        }));

        return command;
    }

    private static string[] Row(Work work, Matrix matrix) =>
    [
        work.ShownTitle, Counted.Figure(matrix.Id), matrix.Called, matrix.Part ?? "", matrix.ShownCode ?? "",
        string.Join(", ", matrix.States.Select(state => state.Name)), MatrixFacts.Fate(matrix), matrix.Place is { } place ? work.Book.PathOf(place) : "",
    ];
}
