using EditionRegister.Tui.Pages;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace EditionRegister.Tui.Screen;

/// <summary>
/// What tones look like. The terminal's own ink and paper everywhere, so that light and dark both hold; of the sixteen
/// colours only three that are legible on either, and none of them where NO_COLOR is set.
/// </summary>
internal sealed class Palette(bool hasColour)
{
    public Attribute Of(Tone tone) => tone switch
    {
        Tone.Quiet => Own(TextStyle.Faint),
        Tone.Strong or Tone.Key => Own(TextStyle.Bold),
        Tone.Good => In(ColorName16.Green, TextStyle.None),
        Tone.Warning => In(ColorName16.Magenta, TextStyle.None),
        Tone.Bad => In(ColorName16.Red, TextStyle.Bold),
        Tone.Here => Own(TextStyle.Reverse),
        _ => Own(TextStyle.None),
    };

    /// <summary>The same for everything the library draws by itself.</summary>
    public Scheme Scheme()
    {
        var plain = Of(Tone.Plain);
        var typed = Own(TextStyle.Underline);

        return new Scheme(plain)
        {
            Normal = plain, HotNormal = plain, Focus = plain, HotFocus = plain, Active = Of(Tone.Here), HotActive = typed,
            Highlight = plain, Editable = typed, ReadOnly = plain, Disabled = plain,
        };
    }

    private static Attribute Own(TextStyle style) => new(Color.None, Color.None, style);

    private Attribute In(ColorName16 colour, TextStyle style) => hasColour ? new Attribute(new Color(colour), Color.None, style) : Own(style);
}
