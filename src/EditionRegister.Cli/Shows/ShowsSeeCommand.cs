using System.CommandLine;
using EditionRegister.UseCases.Shows;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows see</c>: shows one show with its list.</summary>
internal static class ShowsSeeCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("SHOW", "The number of the show.");
        CommandWithExample command = new("see", "Shows one exhibition, sale or fair with what is listed for it, in list order.", "edreg shows see 1") { id };

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var seen = register.LookAround.Show(line.GetValue(id)!.Value);
            printer.Show(
                text: () => Print(printer, seen),
                json: json =>
                {
                    ShowJson.WriteHead(json, seen.Show, seen.Book);
                    json.WriteString("note", seen.Show.Note);
                    json.WriteNumber("last_written_by_entry", seen.Show.V);
                    json.Each("impressions", seen.Listed, listed => ImpressionLists.Write(json, listed));
                });
        }));

        return command;
    }

    private static void Print(Printer printer, ShowSeen seen)
    {
        var show = seen.Show;
        printer.Line($"Show {Counted.Figure(show.Id)}: {ShowsShown.Of(show)}");
        printer.Line();
        printer.Facts(
            ("Place", show.Place is { } place ? seen.Book.PathOf(place) : "not known"),
            ("Host", show.Host is { } host ? seen.Book.NameOf(host) : null),
            ("Opens", show.Opens.ToString()),
            ("Closes", show.Closes.ToString()),
            ("Note", show.Note),
            ("Sheets listed", Counted.Figure(seen.Listed.Count)),
            ("Last written by entry", Counted.Figure(show.V)));
        printer.Section("Listed:", ImpressionLists.Columns, [.. seen.Listed.Select(ImpressionLists.Row)]);
    }
}
