using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>What <c>?</c> opens: what the page is for, and every key that works on it.</summary>
internal sealed class Explained(string where, Page page) : TextPage
{
    private const int KeyColumns = 12;

    public override string Title => $"{where}, explained";

    public override string Explains => "These are the page's words about itself. Esc goes back to it.";

    public override IReadOnlyList<KeyDeed> Keys => [KeyDeed.Opens("Esc", "go back", () => Back.Once)];

    public override IReadOnlyList<Line> Text(int width) =>
    [
        .. Wrap.Of(page.Explains, width).Select(line => (Line)line),
        Line.Empty,
        Line.Of("Keys of this page", Tone.Strong),
        .. page.Keys.SelectMany(key => Row(key.Key, key.Explained ?? Sentence(key.Does), width)),
        Line.Empty,
        Line.Of("Keys that work everywhere", Tone.Strong),
        .. Everywhere(page).SelectMany(key => Row(key.Key, key.Does, width)),
    ];

    private static IEnumerable<(string Key, string Does)> Everywhere(Page page)
    {
        yield return ("1 to 7", "Goes to a room: " + string.Join(", ", RoomNames.All.Select(room => room.Shown())) + ".");
        yield return ("arrows", "Move about; Page Up, Page Down, Home and End move further.");

        if (page is ListPage { FindsIn: { } finds })
        {
            yield return ("/", $"Filters the list as you type, by {finds}. Accents and capitals make no difference. Enter goes back to the list, Esc shows all.");
        }

        yield return ("Esc", "Goes back one page. In a form it keeps what you typed as a draft.");
        yield return ("u", "Undoes the last deed, where the keys line offers it.");
        yield return ("?", "Explains the page you are on.");
        yield return ("q", "Leaves the program. Everything is saved already.");
    }

    private static IEnumerable<Line> Row(string key, string does, int width) =>
        Wrap.Of(does, Math.Max(20, width - KeyColumns)).Select((line, at) =>
            Line.Of(at == 0 ? key.PadRight(KeyColumns) : new string(' ', KeyColumns), Tone.Key).Then(line));

    private static string Sentence(string does) => char.ToUpperInvariant(does[0]) + does[1..] + ".";
}
