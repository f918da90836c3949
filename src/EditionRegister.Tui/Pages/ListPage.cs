namespace EditionRegister.Tui.Pages;

/// <summary>A page that is a list: one row is the current one, and typing after <c>/</c> filters.</summary>
internal abstract class ListPage : Page
{
    private int _current;

    public abstract Listing Rows { get; }

    /// <summary>Said in place of rows where there are none.</summary>
    public abstract string Empty { get; }

    /// <summary>The current row; 0 where there is none.</summary>
    public int Current
    {
        get => Math.Clamp(_current, 0, Math.Max(0, Rows.Count - 1));
        set => _current = value;
    }

    /// <summary>The first row on the screen.</summary>
    public int Top { get; private set; }

    /// <summary>What is found in, for the filter's line: “title, maker, code”; null where there is no filter.</summary>
    public virtual string? FindsIn => null;

    /// <summary>What was understood of the filter beyond its words, in few words; null where there is nothing to say.</summary>
    public virtual string? Understood => null;

    public string Filter { get; private set; } = "";

    public bool IsFiltering { get; private set; }

    public override bool IsTyping => IsFiltering;

    /// <summary>Called after each letter typed into the filter.</summary>
    protected virtual void Filtered()
    {
    }

    /// <summary>Sets the filter as if it had been typed.</summary>
    public void FilterBy(string text)
    {
        Filter = text;
        (_current, Top) = (0, 0);
        Filtered();
    }

    /// <summary>Keeps the current row among <paramref name="height"/> rows on the screen.</summary>
    public void KeepInSight(int height)
    {
        var rows = Math.Max(1, height);
        Top = Math.Clamp(Top, Math.Max(0, Current - rows + 1), Current);
        Top = Math.Min(Top, Math.Max(0, Rows.Count - rows));
    }

    public override bool Moves(string key, int height)
    {
        if (IsFiltering && Typed(key))
        {
            return true;
        }

        if (key == "/" && FindsIn is not null)
        {
            IsFiltering = true;
            return true;
        }

        if (key == "Esc" && Filter.Length > 0)
        {
            FilterBy("");
            return true;
        }

        return MovedTo(key, height) is { } row && MoveTo(row);
    }

    private bool MoveTo(int row)
    {
        Current = Math.Clamp(row, 0, Math.Max(0, Rows.Count - 1));
        return true;
    }

    private int? MovedTo(string key, int height) => key switch
    {
        "Up" => Current - 1,
        "Down" => Current + 1,
        "PageUp" => Current - Math.Max(1, height - 1),
        "PageDown" => Current + Math.Max(1, height - 1),
        "Home" => 0,
        "End" => Rows.Count - 1,
        _ => null,
    };

    private bool Typed(string key)
    {
        switch (key)
        {
            case "Backspace":
                FilterBy(Shorter(Filter));
                return true;
            case "Esc":
                IsFiltering = false;
                FilterBy("");
                return true;
            case "Enter" or "Tab":
                IsFiltering = false;
                return true;
            case "Down" or "Up" or "PageDown" or "PageUp":
                IsFiltering = false;
                return false;
            default:
                var letter = key == "Space" ? " " : key;

                if (!KeyNames.IsLetter(letter))
                {
                    return false;
                }

                FilterBy(Filter + letter);
                return true;
        }
    }

    private static string Shorter(string text)
    {
        var elements = System.Globalization.StringInfo.ParseCombiningCharacters(text);

        return elements.Length == 0 ? "" : text[..elements[^1]];
    }
}
