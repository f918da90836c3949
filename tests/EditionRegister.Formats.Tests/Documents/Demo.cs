using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents;
using EditionRegister.Formats.Templates;

namespace EditionRegister.Formats.Tests.Documents;

/// <summary>Invented statements and labels for the document tests.</summary>
internal static class Demo
{
    public const string Link = "https://example.org/prints/7KQ4-M2X3";

    public static CertificateWording Wording { get; } = CertificateWording.Load(overrideFolder: null);

    public static LogbookHead Head { get; } = new(4711, "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");

    public static CertificateStatement Certificate { get; } = new()
    {
        Heading = Wording.Heading,
        Lines =
        [
            Line("maker", "Marit Halvorsen"),
            Line("title", "Harbour, low tide"),
            Line("matrix-year", "2025"),
            Line("printed", "March to April 2025"),
            Line("technique", "Reduction linocut in six colours"),
            Line("paper", "Mould-made cotton paper 250 g/m², torn edges"),
            Line("image-size", "300 × 420 mm"),
            Line("sheet-size", "382 × 560 mm"),
            Line("number", "3/12"),
            Line("edition", "12, numbered 1 to 12; closed 2025-05-02"),
            Line("proofs", "2 artist’s proofs (A/P I–II), 1 printer’s proof"),
            Line("total", "15 impressions"),
            Line("signature", "Titled, numbered and signed in pencil below the image"),
            Line("matrix-fate", "The block was cut away in printing and cannot be printed again"),
            Line("printer", "The artist"),
            Line("code", "7KQ4-M2X3"),
            Line("serial", "2026-014"),
            Line("issued", "2026-03-01"),
        ],
        Code = "7KQ4-M2X3",
        Serial = "2026-014",
        Issued = "2026-03-01",
        Link = Link,
        SignatureLabel = Wording.SignatureLabel,
        DateLabel = Wording.DateLabel,
        Caution = Wording.Caution,
        LogbookSentence = Wording.Logbook,
        PageWord = Wording.Page,
        Language = Wording.Language,
        Page = PageSize.A4,
    };

    public static StatementLine Line(string key, string value) => new(key, Wording.Label(key), value);

    public static CertificateStatement With(params StatementLine[] lines) => Certificate with
    {
        Lines = [.. Certificate.Lines.Select(old => lines.FirstOrDefault(line => line.Key == old.Key) ?? old), .. lines.Where(line => Certificate.Lines.All(old => old.Key != line.Key))],
    };

    public static byte[] Pdf(CertificateStatement certificate)
    {
        using MemoryStream stream = new();
        CertificatePdf.Write(stream, certificate, Head);
        return stream.ToArray();
    }

    public static byte[] Pdf(string sheet, IReadOnlyList<Label> labels, int firstPosition = 1, PrinterOffset offset = default)
    {
        using MemoryStream stream = new();
        LabelsPdf.Write(stream, LabelSheets.Named(sheet, null), labels, firstPosition, offset);
        return stream.ToArray();
    }

    public static IReadOnlyList<Label> Labels(int count, string title = "Harbour, low tide") =>
        [.. Enumerable.Range(1, count).Select(i => new Label([$"{i}/{count}  {title}", "Marit Halvorsen", "Reduction linocut, 2025"], "7KQ4-M2X3", $"{Link}?n={i}"))];
}
