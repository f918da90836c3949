using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>What Skia leaves out of a PDF or makes up: the language, and an id that follows from the content.</summary>
internal static partial class PdfPatch
{
    private static readonly string Nil = new('0', 32);

    public static byte[] Apply(byte[] pdf, string language)
    {
        // Latin 1 maps every byte to one character and back, so offsets stay offsets.
        var text = Encoding.Latin1.GetString(pdf);
        text = WithLanguage(text, language);
        return Encoding.Latin1.GetBytes(WithStableId(text));
    }

    private static string WithLanguage(string pdf, string language)
    {
        const string catalog = "/Type /Catalog";
        var at = pdf.LastIndexOf(catalog, StringComparison.Ordinal) + catalog.Length;
        var insert = $"\n/Lang ({language})";
        var xref = pdf.LastIndexOf("\nxref\n", StringComparison.Ordinal) + 1;
        var table = XrefEntry().Replace(pdf[xref..], entry => Moved(entry, at, insert.Length));
        table = StartXref().Replace(table, $"startxref\n{(xref + insert.Length).ToString(CultureInfo.InvariantCulture)}\n");

        return pdf[..at] + insert + pdf[at..xref] + table;
    }

    private static string Moved(Match entry, int at, int by)
    {
        var offset = long.Parse(entry.Groups[1].Value, CultureInfo.InvariantCulture);
        return (offset > at ? offset + by : offset).ToString("D10", CultureInfo.InvariantCulture) + entry.Groups[2].Value;
    }

    // The same random UUID stands in the metadata and in /ID: replaced by one made of everything else.
    private static string WithStableId(string pdf)
    {
        if (Uuid().Match(pdf) is not { Success: true } found)
        {
            return pdf;
        }

        var without = WithId(pdf.Replace(found.Groups[1].Value, Dashed(Nil), StringComparison.OrdinalIgnoreCase), Nil);
        var digest = SHA256.HashData(Encoding.Latin1.GetBytes(without))[..16];
        digest[6] = (byte)((digest[6] & 0x0F) | 0x80); // RFC 9562 version 8: made of our own choosing
        digest[8] = (byte)((digest[8] & 0x3F) | 0x80);
        var id = Convert.ToHexStringLower(digest);

        return WithId(without.Replace(Dashed(Nil), Dashed(id), StringComparison.Ordinal), id);
    }

    // Skia writes the id in hex, or, about once in a hundred times, as a literal string where that is shorter. It stands behind
    // the table of offsets, so that its length moves nothing.
    private static string WithId(string pdf, string hex)
    {
        const string key = "/ID [";
        var from = pdf.LastIndexOf(key, StringComparison.Ordinal) + key.Length;
        var to = pdf.LastIndexOf("]>>", StringComparison.Ordinal);

        return $"{pdf[..from]}<{hex}> <{hex}>{pdf[to..]}";
    }

    private static string Dashed(string hex) => $"{hex[..8]}-{hex[8..12]}-{hex[12..16]}-{hex[16..20]}-{hex[20..]}";

    [GeneratedRegex(@"uuid:([0-9a-fA-F]{8}(?:-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12})")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"(?<=\n)(\d{10})( \d{5} n)")]
    private static partial Regex XrefEntry();

    [GeneratedRegex(@"startxref\n\d+\n")]
    private static partial Regex StartXref();
}
