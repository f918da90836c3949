using System.CommandLine;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Shows;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows list</c>: lists shows with their numbers.</summary>
internal static class ShowsListCommand
{
    private static readonly Column[] Columns = [new("show", IsRight: true), new("name"), new("kind"), new("place"), new("host"), new("opens"), new("closes"), new("sheets", IsRight: true)];

    public static Command Create(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists all shows with their numbers.", "edreg shows list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var (shows, book) = (register.LookAround.Shows(), register.LookAround.Book());
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, shows.Select(show => Row(show, book)));
                    printer.Line($"{Counted.Of(shows.Count, "show")}.");
                },
                json: json => json.Each("shows", shows, show => ShowJson.WriteHead(json, show, book)));
        }));

        return command;
    }

    private static string[] Row(Show show, AddressBook book) =>
    [
        Counted.Figure(show.Id), show.ShownName, show.Kind, show.Place is { } place ? book.PathOf(place) : "", show.Host is { } host ? book.NameOf(host) : "",
        show.Opens.Text ?? "", show.Closes.Text ?? "", Counted.Figure(show.Listed.Count()),
    ];
}
