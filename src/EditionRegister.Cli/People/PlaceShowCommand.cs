using System.CommandLine;
using System.Text.Json;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary><c>edreg place show</c>: everything that lies in a place and inside it.</summary>
internal static class PlaceShowCommand
{
    public static Command Create(CommandContext context)
    {
        var path = Arg.Text("PATH", "The place, from the outside in, or as much of the end of that as is needed.");
        var alone = Opt.Flag("--alone", "Only the place itself, without the places inside it.");
        var file = Opt.Text("--out", "FILE", "Write the list to this file: as CSV where its name ends so, else as text to print.");
        CommandWithExample command = new("show", "Shows everything that lies in a place and in the places inside it, place by place: codes, numbers, owners, condition.", "edreg place show \"Plan chest\" --out plan-chest.csv") { path, alone, file };

        command.SetAction(line => line.GetValue(file) is { } to
            ? context.Record(line, register =>
            {
                var full = context.PathOf(to)!;
                var contents = register.WritePlaceList.Run(Places.Find(register.LookAround.Book(), line.GetRequiredValue(path)), full, line.GetValue(alone));

                return new Recorded($"What lies in {contents.Path} written to {context.Shown(full)}: {PlaceShown.InAll(contents)}", json =>
                {
                    json.WriteString("file", full);
                    json.WriteNumber("sheets", contents.Sheets);
                    json.WriteNumber("matrices", contents.Matrices);
                });
            })
            : context.Look(line, (register, printer) => Print(printer, register.LookAround.PlaceContents(Places.Find(register.LookAround.Book(), line.GetRequiredValue(path)), line.GetValue(alone)))));

        return command;
    }

    private static void Print(Printer printer, PlaceContents contents) => printer.Show(
        text: () =>
        {
            printer.Line(contents.Path);

            foreach (var table in PlaceShown.Tables(contents))
            {
                printer.Section(table.Heading, [.. table.Columns.Select(column => new Column(column.Head, column.IsRight))], table.Rows);
            }

            printer.Line();
            printer.Line(PlaceShown.InAll(contents));
        },
        json: json =>
        {
            json.WriteNumber("place", contents.Place.Id);
            json.WriteString("path", contents.Path);
            json.WriteNumber("sheets", contents.Sheets);
            json.WriteNumber("matrices", contents.Matrices);
            json.Each("places", contents.Parts, part =>
            {
                json.WriteNumber("place", part.Place);
                json.WriteString("path", part.Path);
                json.Each("things", part.Things, thing => Thing(json, thing));
            });
        });

    private static void Thing(Utf8JsonWriter json, LyingThing thing)
    {
        json.WriteString("kind", thing.Kind);
        json.WriteString("code", thing.Code);
        json.WriteString("title", thing.Title);
        json.WriteString("maker", thing.Maker);
        json.WriteString("number", thing.Number);
        json.WriteString("owner", thing.Owner);
        json.WriteString("condition", thing.Condition);
        json.Date("since", thing.Since);
    }
}
