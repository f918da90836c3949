using System.CommandLine;
using EditionRegister.Domain.People;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary><c>edreg place list</c>: lists the places, or what lies in one.</summary>
internal static class PlaceListCommand
{
    private static readonly Column[] Columns = [new("place", IsRight: true), new("name"), new("kept by"), new("here", IsRight: true), new("with inside", IsRight: true)];

    public static Command Create(CommandContext context)
    {
        var path = Arg.PerhapsText("PATH", "Show what lies in this place, and in the places in it.");
        CommandWithExample command = new("list", "Lists all places as they lie in each other, or what lies in one of them.", "edreg place list \"Drawer 3\"") { path };

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
        var places = register.LookAround.Places(null);
        var shown = places.Select(place => place.Path).ToHashSet(StringComparer.Ordinal);

        printer.Show(
            text: () =>
            {
                printer.Table(Columns, places.Select(place => (string[])[Counted.Figure(place.Id), InTree(place.Path, shown), place.KeeperName ?? "", Counted.Figure(place.Sheets), Counted.Figure(place.Within)]));
                printer.Line($"{Counted.Of(places.Count, "place")}.");
            },
            json: json => json.Each("places", places, place =>
            {
                json.WriteNumber("place", place.Id);
                json.WriteString("path", place.Path);
                json.Whole("keeper", place.Keeper);
                json.WriteNumber("sheets", place.Sheets);
                json.WriteNumber("with_inside", place.Within);
            }));
    }

    /// <summary>The place's own name, further in the deeper it lies; the whole way where what is around it is not on the list.</summary>
    private static string InTree(string path, HashSet<string> shown)
    {
        var at = path.LastIndexOf(AddressBook.Inside, StringComparison.Ordinal);

        return at < 0 || !shown.Contains(path[..at])
            ? path
            : new string(' ', 2 * (path.Split(AddressBook.Inside).Length - 1)) + path[(at + AddressBook.Inside.Length)..];
    }
}
