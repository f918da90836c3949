using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>The fonts of one document: the shipped ones, and the system's for characters those lack.</summary>
internal sealed class FontShelf : IDisposable
{
    private static readonly ConcurrentDictionary<Face, byte[]> Shipped = new();

    private readonly Dictionary<Face, ShelfFont> _fonts = [];
    private readonly Dictionary<string, ShelfFont> _system = [];
    private readonly Dictionary<Rune, ShelfFont?> _fallbacks = [];

    public ShelfFont Of(Face face)
    {
        if (!_fonts.TryGetValue(face, out var font))
        {
            _fonts[face] = font = new ShelfFont(Shipped.GetOrAdd(face, Load), index: 0);
        }

        return font;
    }

    /// <summary>The font for one user-perceived letter; the face itself, and so a visible box, if no font has it.</summary>
    public ShelfFont For(string letter, Face face)
    {
        var own = Of(face);
        var missing = letter.EnumerateRunes().Where(rune => !IsInvisible(rune) && !own.Has(rune)).ToList();
        return missing.Count == 0 ? own : Fallback(missing[0]) ?? own;
    }

    public void Dispose()
    {
        foreach (var font in _fonts.Values.Concat(_system.Values))
        {
            font.Dispose();
        }
    }

    private ShelfFont? Fallback(Rune rune)
    {
        if (!_fallbacks.TryGetValue(rune, out var font))
        {
            _fallbacks[rune] = font = OpenFallback(rune);
        }

        return font;
    }

    private ShelfFont? OpenFallback(Rune rune)
    {
        // One that is open already is preferred, so that a title does not change its face from letter to letter.
        if (_system.Values.FirstOrDefault(open => open.Has(rune)) is { } known)
        {
            return known;
        }

        if (SystemFonts.With(rune) is not { } found)
        {
            return null;
        }

        return _system[found.Key] = found.Open();
    }

    private static bool IsInvisible(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Format or UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || rune.Value is (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF);

    private static byte[] Load(Face face)
    {
        var file = face switch
        {
            Face.Serif => "NotoSerif_400Regular.ttf",
            Face.SerifItalic => "NotoSerif_400Regular_Italic.ttf",
            Face.SerifSemiBold => "NotoSerif_600SemiBold.ttf",
            Face.Sans => "NotoSans_400Regular.ttf",
            Face.SansSemiBold => "NotoSans_600SemiBold.ttf",
            _ => throw new ArgumentOutOfRangeException(nameof(face)),
        };

        using var stream = typeof(FontShelf).Assembly.GetManifestResourceStream("fonts/" + file)!;
        var data = new byte[stream.Length];
        stream.ReadExactly(data);
        return data;
    }
}
