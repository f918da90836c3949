using SkiaSharp;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>The fonts of a document as they are embedded: only the glyphs that are drawn, with their ids kept.</summary>
internal sealed class SubsetFonts : IDisposable
{
    private readonly Dictionary<ShelfFont, SKTypeface> _typefaces = [];

    public SubsetFonts(IEnumerable<ShapedText> texts)
    {
        foreach (var drawn in texts.SelectMany(text => text.Runs).GroupBy(run => run.Font))
        {
            var glyphs = drawn.SelectMany(run => run.Glyphs).ToHashSet();
            using var data = SKData.CreateCopy(FontSubset.Of(drawn.Key, glyphs.Order()) ?? drawn.Key.Data);
            _typefaces[drawn.Key] = SKTypeface.FromData(data);
        }
    }

    /// <param name="font">A font some of whose glyphs are drawn.</param>
    /// <param name="size">Millimetres.</param>
    public SKFont Of(ShelfFont font, float size) => new(_typefaces[font], size)
    {
        Subpixel = true,
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
    };

    public void Dispose()
    {
        foreach (var typeface in _typefaces.Values)
        {
            typeface.Dispose();
        }
    }
}
