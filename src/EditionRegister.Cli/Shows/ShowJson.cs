using System.Text.Json;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Shows;

namespace EditionRegister.Cli;

/// <summary>Shows, for machines.</summary>
internal static class ShowJson
{
    public static void WriteHead(Utf8JsonWriter json, Show show, AddressBook book)
    {
        json.WriteNumber("show", show.Id);
        json.WriteString("name", show.Name);
        json.WriteString("kind", show.Kind);
        json.WriteString("place", show.Place is { } place ? book.PathOf(place) : null);
        json.WriteString("host", show.Host is { } host ? book.NameOf(host) : null);
        json.Date("opens", show.Opens);
        json.Date("closes", show.Closes);
        json.WriteNumber("listed", show.Listed.Count());
    }
}
