using System.Runtime.InteropServices;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>Cuts a font down to the glyphs that are drawn, keeping their ids; HarfBuzzSharp ships these functions and does not wrap them.</summary>
internal static partial class FontSubset
{
    private const string Library = "libHarfBuzzSharp";

    // HB_SUBSET_FLAGS_NO_HINTING | RETAIN_GIDS | NOTDEF_OUTLINE: the last keeps the box for a missing character visible.
    private const uint Flags = 0x1 | 0x2 | 0x40;

    /// <summary>The subset as a font file, or null where HarfBuzz can't make one (the whole font serves then).</summary>
    public static byte[]? Of(ShelfFont font, IEnumerable<ushort> glyphs)
    {
        var input = CreateInput();

        if (input == 0)
        {
            return null;
        }

        try
        {
            var set = GlyphSet(input);

            foreach (var glyph in glyphs)
            {
                SetAdd(set, glyph);
            }

            SetFlags(input, Flags);
            return Bytes(Subset(font.HbFace.Handle, input));
        }
        finally
        {
            DestroyInput(input);
        }
    }

    private static byte[]? Bytes(nint face)
    {
        if (face == 0)
        {
            return null;
        }

        var blob = ReferenceBlob(face);
        var data = BlobData(blob, out var length);
        var bytes = new byte[length];
        Marshal.Copy(data, bytes, 0, bytes.Length);
        DestroyBlob(blob);
        DestroyFace(face);
        return bytes.Length == 0 ? null : bytes;
    }

    [LibraryImport(Library, EntryPoint = "hb_subset_input_create_or_fail")]
    private static partial nint CreateInput();

    [LibraryImport(Library, EntryPoint = "hb_subset_input_destroy")]
    private static partial void DestroyInput(nint input);

    [LibraryImport(Library, EntryPoint = "hb_subset_input_glyph_set")]
    private static partial nint GlyphSet(nint input);

    [LibraryImport(Library, EntryPoint = "hb_subset_input_set_flags")]
    private static partial void SetFlags(nint input, uint flags);

    [LibraryImport(Library, EntryPoint = "hb_set_add")]
    private static partial void SetAdd(nint set, uint value);

    [LibraryImport(Library, EntryPoint = "hb_subset_or_fail")]
    private static partial nint Subset(nint face, nint input);

    [LibraryImport(Library, EntryPoint = "hb_face_reference_blob")]
    private static partial nint ReferenceBlob(nint face);

    [LibraryImport(Library, EntryPoint = "hb_face_destroy")]
    private static partial void DestroyFace(nint face);

    [LibraryImport(Library, EntryPoint = "hb_blob_get_data")]
    private static partial nint BlobData(nint blob, out uint length);

    [LibraryImport(Library, EntryPoint = "hb_blob_destroy")]
    private static partial void DestroyBlob(nint blob);
}
