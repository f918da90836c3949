using System.Runtime.InteropServices;
using System.Text;
using HarfBuzzSharp;
using HbFont = HarfBuzzSharp.Font;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>One font file, open for shaping.</summary>
internal sealed class ShelfFont : IDisposable
{
    private readonly GCHandle _pin;
    private readonly Blob _blob;

    public ShelfFont(byte[] data, int index)
    {
        Data = data;
        _pin = GCHandle.Alloc(data, GCHandleType.Pinned);
        _blob = new(_pin.AddrOfPinnedObject(), data.Length, MemoryMode.ReadOnly);
        HbFace = new(_blob, index);
        Shaper = new(HbFace);
        Shaper.SetFunctionsOpenType();
        Em = HbFace.UnitsPerEm;
        Shaper.SetScale(Em, Em);
        MissingGlyph = Shaper.TryGetNominalGlyph(0xFFFD, out var replacement) ? replacement : 0;
        MissingAdvance = Shaper.GetHorizontalGlyphAdvance(MissingGlyph);
    }

    /// <summary>The file as it is.</summary>
    public byte[] Data { get; }

    public HarfBuzzSharp.Face HbFace { get; }

    public HbFont Shaper { get; }

    /// <summary>Font units to the em.</summary>
    public int Em { get; }

    /// <summary>
    /// Drawn for a character that no font has: U+FFFD rather than glyph 0, whose first use Skia leaves out of the text layer.
    /// </summary>
    public uint MissingGlyph { get; }

    /// <summary>Font units.</summary>
    public int MissingAdvance { get; }

    public bool Has(Rune rune) => Shaper.TryGetNominalGlyph((uint)rune.Value, out var glyph) && glyph != 0;

    public void Dispose()
    {
        Shaper.Dispose();
        HbFace.Dispose();
        _blob.Dispose();
        _pin.Free();
    }
}
