using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace EditionRegister.Tui.Screen;

/// <summary>What a canvas draws with.</summary>
internal sealed record Pen(Palette Palette, bool IsAscii)
{
    public string Shown(string text) => IsAscii ? AsciiText.Of(SafeText.Show(text)) : SafeText.Show(text);
}

/// <summary>A part of the screen that is lines of text in tones. Nothing it is given can break it or the terminal.</summary>
internal abstract class Canvas : View
{
    private readonly Pen _pen;

    protected Canvas(Pen pen)
    {
        _pen = pen;
        SetScheme(pen.Palette.Scheme());
    }

    protected abstract IReadOnlyList<Line> Picture(int width, int height);

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var lines = Picture(Viewport.Width, Viewport.Height);

        for (var row = 0; row < Viewport.Height; row++)
        {
            Draw(row, row < lines.Count ? lines[row] : Line.Empty);
        }

        return true;
    }

    private void Draw(int row, Line line)
    {
        var column = 0;

        foreach (var bit in line.Bits)
        {
            var text = TextWidth.Cut(_pen.Shown(bit.Text), Math.Max(0, Viewport.Width - column));

            if (text.Length > 0)
            {
                SetAttribute(_pen.Palette.Of(bit.Tone));
                AddStr(column, row, text);
                column += TextWidth.Of(text);
            }
        }

        if (column < Viewport.Width)
        {
            SetAttribute(_pen.Palette.Of(Tone.Plain));
            AddStr(column, row, new string(' ', Viewport.Width - column));
        }
    }

    protected static bool IsClick(Mouse mouse) => mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked);

    protected static bool IsDoubleClick(Mouse mouse) => mouse.Flags.HasFlag(MouseFlags.LeftButtonDoubleClicked);
}
