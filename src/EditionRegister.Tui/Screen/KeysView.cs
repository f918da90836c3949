using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Screen;

/// <summary>The keys that work now; each can be clicked too.</summary>
internal sealed class KeysView(House house, Pen pen) : Canvas(pen)
{
    public const int Rows = 2;

    private readonly List<(int Row, int From, int To, string Key)> _places = [];

    protected override IReadOnlyList<Line> Picture(int width, int height)
    {
        _places.Clear();

        return house.Asking switch
        {
            Form form => [Keys(0, OfForm(form), width)],
            Question => [Line.Of("Press the key of an answer. Esc changes nothing.", Tone.Quiet)],
            Choice => [Keys(0, [("Enter", "pick"), ("Esc", "leave")], width)],
            _ when house.Page.IsTyping => [Line.Of("Letters find as you type them.   ", Tone.Quiet), Keys(1, [("Enter", "back to the list"), ("Esc", "show all again")], width)],
            _ => [.. OfPage(width)],
        };
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (!IsClick(mouse) || mouse.Position is not { } at)
        {
            return false;
        }

        var key = _places.FirstOrDefault(place => place.Row == at.Y && at.X >= place.From && at.X < place.To).Key;

        if (key is null || house.Asking is Form)
        {
            return false;
        }

        _ = house.PressAsync(key);
        return true;
    }

    private IEnumerable<Line> OfPage(int width)
    {
        List<(string, string)> page = [.. house.Page.Keys.Select(key => (key.Key, key.Does))];
        List<(string, string)> everywhere = [.. house.Everywhere()];
        var fit = Fitting(page, width);

        yield return Keys(0, page[..fit], width);

        // What the first line has no room for goes before what works everywhere, as far as it goes; ? tells the rest.
        var spare = page[fit..].Where(key => Fitting([key, .. everywhere], width) > everywhere.Count).Take(1).ToList();

        while (spare.Count > 0 && spare.Count < page.Count - fit && Fitting([.. page[fit..(fit + spare.Count + 1)], .. everywhere], width) > everywhere.Count + spare.Count)
        {
            spare = page[fit..(fit + spare.Count + 1)];
        }

        yield return Keys(1, [.. spare, .. everywhere], width);
    }

    private static List<(string, string)> OfForm(Form form)
    {
        List<(string, string)> keys = [("Enter", form.At == form.Fields.Count - 1 ? "save" : "next"), ("Up", "back"), ("F2", "save")];

        if (form.Current.Words is not null)
        {
            keys.Insert(0, ("Left Right", "choose"));
        }
        else if (form.Suggestions().Count > 0)
        {
            keys.Add(("F3", "take what is known"));
        }

        keys.Add(("F4", "as last time"));
        keys.Add(("Esc", "leave"));

        return keys;
    }

    private static int Fitting(List<(string Key, string Does)> keys, int width)
    {
        var column = 0;

        for (var at = 0; at < keys.Count; at++)
        {
            column += Columns(keys[at]) + (at > 0 ? 3 : 0);

            if (column > width)
            {
                return at;
            }
        }

        return keys.Count;
    }

    private static int Columns((string Key, string Does) key) => TextWidth.Of(key.Key) + 1 + TextWidth.Of(key.Does);

    private Line Keys(int row, List<(string Key, string Does)> keys, int width)
    {
        var line = Line.Empty;
        var column = 0;

        foreach (var key in keys)
        {
            if (column > 0)
            {
                line = line.Then("   ");
                column += 3;
            }

            line = line.Then(key.Key, Tone.Key).Then(" " + key.Does);
            _places.Add((row, column, column + Columns(key), key.Key));
            column += Columns(key);
        }

        return column > width && keys.Count > 1 ? Keys(row, [.. keys.Take(keys.Count - 1)], width) : line;
    }
}
