namespace EditionRegister.Tui.Pages;

/// <summary>A page of text to read, longer than the screen perhaps.</summary>
internal abstract class TextPage : Page
{
    /// <summary>The first line on the screen.</summary>
    public int Top { get; private set; }

    private int _length;
    private int _height;

    /// <summary>The whole text for a screen of that many columns.</summary>
    public abstract IReadOnlyList<Line> Text(int width);

    /// <summary>The lines on a screen of that size.</summary>
    public IReadOnlyList<Line> InSight(int width, int height)
    {
        var text = Text(width);
        (_length, _height) = (text.Count, height);
        Top = Math.Clamp(Top, 0, Math.Max(0, _length - height));

        return [.. text.Skip(Top).Take(height)];
    }

    /// <summary>Whether the text goes on below what was last put on the screen.</summary>
    public bool HasMoreBelow => Top + _height < _length;

    public override bool Moves(string key, int height)
    {
        int? top = key switch
        {
            "Up" => Top - 1,
            "Down" => Top + 1,
            "PageUp" => Top - Math.Max(1, height - 1),
            "PageDown" => Top + Math.Max(1, height - 1),
            "Home" => 0,
            "End" => _length - height,
            _ => null,
        };

        if (top is not { } line)
        {
            return false;
        }

        Top = Math.Clamp(line, 0, Math.Max(0, _length - height));
        return true;
    }
}
