using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Screen;

/// <summary>The keys that work now; each can be clicked too.</summary>
internal sealed class KeysView(House house, Pen pen) : Canvas(pen)
{
    private const int Least = 2;

    /// <summary>Lines it takes: as many as the page's keys need, up to what a screen of that height can spare.</summary>
    public int RowsFor(int width, int height)
    {
        var most = height >= 30 ? 4 : 3;
        List<(string, string)> left = [.. house.Page.Keys.Select(key => (key.Key, key.Does))];
        var rows = 1;

        while (left.Count > 0 && rows < most)
        {
            left = left[Math.Max(1, Fitting(left, width))..];
            rows++;
        }

        return _rows = house.Asking is null && house.Page is not ListPage { IsFiltering: true } ? Math.Max(Least, rows) : _rows;
    }

    // What is asked over a page leaves the page where it was.
    private int _rows = Least;

    private readonly List<(int Row, int From, int To, string Key)> _places = [];

    protected override IReadOnlyList<Line> Picture(int width, int height)
    {
        _places.Clear();

        return house.Asking switch
        {
            Form form => [Keys(0, OfForm(form), width)],
            Question => [Line.Of("Press the key of an answer. Esc changes nothing.", Tone.Quiet)],
            Choice => [Keys(0, [("Enter", "pick"), ("Esc", "leave")], width)],
            _ when house.Page is ListPage { IsFiltering: true } => [Line.Of("Letters find as you type them.   ", Tone.Quiet), Keys(1, [("Enter", "back to the list"), ("Esc", "show all again")], width)],
            _ => [.. OfPage(width, height)],
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

    /// <summary>The page's own keys over one line or more, those that work everywhere on the last; what finds no room is told by <c>?</c>.</summary>
    private IEnumerable<Line> OfPage(int width, int height)
    {
        List<(string, string)> left = [.. house.Page.Keys.Select(key => (key.Key, key.Does))];
        List<(string, string)> everywhere = [.. house.Everywhere()];

        for (var row = 0; row < height - 1; row++)
        {
            var fit = Fitting(left, width);

            yield return Keys(row, left[..fit], width);

            left = left[fit..];
        }

        var spare = left.Count;

        while (spare > 0 && Fitting([.. left[..spare], .. everywhere], width) < everywhere.Count + spare)
        {
            spare--;
        }

        yield return Keys(height - 1, [.. left[..spare], .. everywhere], width);
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
