using System.Collections.Concurrent;
using System.Text;
using HarfBuzzSharp;
using SkiaSharp;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>Font files of this machine, asked only for characters that the shipped fonts lack.</summary>
internal static class SystemFonts
{
    private static readonly Tag[] Outlines = [Tag.Parse("glyf"), Tag.Parse("CFF "), Tag.Parse("CFF2")];
    private static readonly ConcurrentDictionary<Rune, string?> Found = new();
    private static readonly Lazy<IReadOnlyList<string>> Files = new(List);

    /// <summary>A font with outlines that has the character, or null.</summary>
    public static (string Key, Func<ShelfFont> Open)? With(Rune rune) => Managed(rune) ?? InFolders(rune);

    private static (string, Func<ShelfFont>)? Managed(Rune rune)
    {
        using var typeface = SKFontManager.Default.MatchCharacter(rune.Value);
        var index = 0;
        using var stream = typeface?.OpenStream(out index);

        if (typeface is null || stream is null || stream.Length == 0)
        {
            return null;
        }

        var data = new byte[stream.Length];
        stream.Read(data, data.Length);
        return Serves(data, index, rune) ? ($"{typeface.FamilyName} {typeface.FontWeight} {typeface.FontSlant}", () => new ShelfFont(data, index)) : null;
    }

    // The Linux build of Skia that needs no other library has no font manager, so we look for ourselves.
    private static (string, Func<ShelfFont>)? InFolders(Rune rune) =>
        Found.GetOrAdd(rune, wanted => Files.Value.FirstOrDefault(file => Serves(file, wanted))) is { } path
            ? (path, () => new ShelfFont(File.ReadAllBytes(path), 0))
            : null;

    private static bool Serves(byte[] data, int index, Rune rune)
    {
        using ShelfFont font = new(data, index);
        return HasOutlines(font.HbFace) && font.Has(rune);
    }

    // Mapped, not read: of hundreds of files only the character maps are touched.
    private static bool Serves(string file, Rune rune)
    {
        using var blob = Blob.FromFile(file);
        using Face face = new(blob, 0);
        using Font font = new(face);
        font.SetFunctionsOpenType();
        return HasOutlines(face) && font.TryGetNominalGlyph((uint)rune.Value, out var glyph) && glyph != 0;
    }

    private static bool HasOutlines(Face face) => Outlines.Any(tag =>
    {
        using var table = face.ReferenceTable(tag);
        return table.Length > 0;
    });

    // Plain weights of text faces first, before display faces such as Kufi or Rashi, and always in the same order.
    private static int Rank(string name) =>
        !name.Contains("Regular", StringComparison.Ordinal) ? 3
        : name.Contains("Serif", StringComparison.Ordinal) || name.Contains("Naskh", StringComparison.Ordinal) ? 0
        : name.Contains("Sans", StringComparison.Ordinal) ? 1
        : 2;

    private static IReadOnlyList<string> List()
    {
        EnumerationOptions all = new() { RecurseSubdirectories = true, IgnoreInaccessible = true };

        return
        [
            .. Folders().Where(Directory.Exists)
                .SelectMany(folder => Directory.EnumerateFiles(folder, "*", all))
                .Where(file => Path.GetExtension(file).ToUpperInvariant() is ".TTF" or ".OTF" or ".TTC" or ".OTC")
                .OrderBy(file => Rank(Path.GetFileNameWithoutExtension(file)))
                .ThenBy(file => file, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<string> Folders()
    {
        if (!OperatingSystem.IsLinux())
        {
            return [];
        }

        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return [Path.Combine(home, ".local/share/fonts"), Path.Combine(home, ".fonts"), "/usr/local/share/fonts", "/usr/share/fonts"];
    }
}
