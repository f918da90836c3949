using System.CommandLine;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary><c>edreg place list</c>: lists the places, or what lies in one.</summary>
internal static class PlaceListCommand
{
    private static readonly Column[] Columns = [new("place", IsRight: true), new("path"), new("kept by"), new("sheets", IsRight: true)];

    public static Command Create(CommandContext context)
    {
        var path = Arg.PerhapsText("PATH", "Show what lies in this place, and in the places in it.");
        CommandWithExample command = new("list", "Lists all places, or what lies in one of them.", "edreg place list \"Drawer 3\"") { path };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            if (line.GetValue(path) is { } place)
            {
                ImpressionLists.Print(printer, register.ListImpressions.Run(new ImpressionsWanted { Place = place }), skipped: 0);
            }
            else
            {
                Print(printer, register);
            }
        }));

        return command;
    }

    private static void Print(Printer printer, Register register)
    {
        var book = register.LookAround.Book();
        var sheets = register.LookAround.Works().SelectMany(work => work.Impressions).Select(sheet => sheet.Where?.Place).OfType<long>().CountBy(place => place).ToDictionary();
        var places = book.Places.Values.Select(place => (place.Id, Path: book.PathOf(place.Id), place.Keeper)).OrderBy(place => place.Path, StringComparer.Ordinal).ToList();

        printer.Show(
            text: () =>
            {
                printer.Table(Columns, places.Select(place => (string[])[Counted.Figure(place.Id), place.Path, place.Keeper is { } keeper ? book.NameOf(keeper) : "", Counted.Figure(sheets.GetValueOrDefault(place.Id))]));
                printer.Line($"{Counted.Of(places.Count, "place")}.");
            },
            json: json => json.Each("places", places, place =>
            {
                json.WriteNumber("place", place.Id);
                json.WriteString("path", place.Path);
                json.Whole("keeper", place.Keeper);
                json.WriteNumber("sheets", sheets.GetValueOrDefault(place.Id));
            }));
    }
}
