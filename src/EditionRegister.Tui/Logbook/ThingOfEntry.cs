using System.Globalization;
using EditionRegister.Tui.AddressBook;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Logbook;

/// <summary>What an entry is on, and the page it is found on.</summary>
internal static class ThingOfEntry
{
    /// <summary>The key that goes there; null where there is no page for it.</summary>
    public static KeyDeed? Key(Desk desk, string root) => Split(root) switch
    {
        ("work", var work) => Opens("work", () => new WorkPage(desk, work)),
        ("person", var person) => Opens("person", () => new PersonPage(desk, person)),
        ("place", var place) => Opens("place", () => new PlacePage(desk, place)),
        ("show", _) => Opens("shows", () => new GoTo(RoomName.Shows)),
        _ => null,
    };

    private static KeyDeed Opens(string what, Func<Opening> opening) => KeyDeed.Opens("g", $"go to the {what}", opening);

    private static (string Kind, long Id)? Split(string root) =>
        root.Split('/') is [var kind, var digits] && long.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? (kind, id) : null;
}
