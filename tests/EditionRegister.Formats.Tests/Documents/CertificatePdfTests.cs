using System.Text;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using UglyToad.PdfPig.Tokens;

namespace EditionRegister.Formats.Tests.Documents;

public sealed class CertificatePdfTests
{
    // ISO 216: A4 is 210 × 297 mm. Letter is 8.5 × 11 in.
    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("Letter", 215.9, 279.4)]
    public void Is_one_upright_page_of_the_chosen_paper(string page, double width, double height)
    {
        var pdf = Demo.Pdf(Demo.Certificate with { Page = PageSize.Of(page)! });

        Assert.Equal(1, PdfReading.Read(pdf, document => document.NumberOfPages));
        Assert.Equal(width, PdfReading.Size(pdf, 1).Width, tolerance: 0.2);
        Assert.Equal(height, PdfReading.Size(pdf, 1).Height, tolerance: 0.2);
    }

    [Fact]
    public void Every_label_and_value_can_be_read_back()
    {
        var text = PdfReading.Texts(Demo.Pdf(Demo.Certificate with { Supersedes = "2025-101" }))[0];

        Assert.All(Demo.Certificate.Lines, line => Assert.Contains(PdfReading.Plain(line.Value), text, StringComparison.Ordinal));
        Assert.All(Demo.Certificate.Lines.Where(line => line.Key != "title"), line => Assert.Contains(line.Label, text, StringComparison.Ordinal));
        Assert.All(
            ["7KQ4-M2X3", "2026-014", "2026-03-01", "2025-101", "Signature of the issuer", "Date", "Certificate of Authenticity"],
            word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_caution_stands_whole_and_the_head_in_groups_of_eight()
    {
        var text = PdfReading.Texts(Demo.Pdf(Demo.Certificate))[0];

        Assert.Contains(Demo.Certificate.Caution, text, StringComparison.Ordinal);
        Assert.Contains("Logbook entry 4711, head 9f86d081 884c7d65 9a2feaa0 c55ad015 a3bf4f1b 2b0b822c d15d6c15 b0f00a08", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void No_letter_stands_outside_the_margins(string page)
    {
        var size = PageSize.Of(page)!;
        var pdf = Demo.Pdf(Many(40) with { Page = size });
        Box inner = new(23, 20, size.Width - 46, size.Height - 35);

        for (var number = 1; number <= PdfReading.Texts(pdf).Count; number++)
        {
            Assert.All(PdfReading.Letters(pdf, number), letter => Assert.True(inner.Holds(letter.Box), $"{letter} on page {number}"));
        }
    }

    [Fact]
    public void Forty_long_lines_go_on_over_pages_and_none_is_lost()
    {
        var texts = PdfReading.Texts(Demo.Pdf(Many(40)));

        var all = string.Concat(texts);
        Assert.True(texts.Count > 1);
        Assert.All(Enumerable.Range(1, 40), i => Assert.Contains($"Value {i} begins", all, StringComparison.Ordinal));
        Assert.All(Enumerable.Range(1, 40), i => Assert.Contains($"{i} ends", all, StringComparison.Ordinal));
        Assert.All(texts, text => Assert.Contains("7KQ4-M2X3", text, StringComparison.Ordinal));
        Assert.Contains($"Page {texts.Count} / {texts.Count}", texts[^1], StringComparison.Ordinal);
        Assert.Contains("Signature of the issuer", texts[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Ağaoğlu’nun kışı: žluťoučký kůň, Ægir, Straße, Ελληνικά, кириллица")]
    [InlineData("The Whole of the Harbour as Seen from the Loft at Low Tide, with Two Boats, a Heron and the Ağaoğlu Sisters Mending Nets in the Last of the Light, After the Rain, and Before the Boats Came Home")]
    [InlineData("office fjord fluffy affliction")]
    public void A_title_is_printed_whole(string title)
    {
        var text = PdfReading.Texts(Demo.Pdf(Demo.With(Demo.Line("title", title))))[0];

        Assert.Contains(title, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_without_a_space_is_broken_and_every_letter_of_it_is_there()
    {
        var word = string.Concat(Enumerable.Repeat("abcdefghij", 30));

        var pdf = Demo.Pdf(Demo.With(Demo.Line("title", word), Demo.Line("number", word[..60])));

        var letters = string.Concat(PdfReading.Letters(pdf, 1).Select(letter => letter.Letter));
        Assert.Contains(word, letters, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_statement_gives_the_same_bytes_and_another_does_not()
    {
        var first = Demo.Pdf(Demo.Certificate);

        Assert.Equal(first, Demo.Pdf(Demo.Certificate));
        Assert.NotEqual(first, Demo.Pdf(Demo.Certificate with { Serial = "2026-015" }));
    }

    [Fact]
    public void Says_its_title_language_and_day_of_issue()
    {
        var pdf = Demo.Pdf(Demo.Certificate);

        var (title, created, language) = PdfReading.Read(pdf, document => (
            document.Information.Title,
            document.Information.CreationDate,
            ((StringToken)document.Structure.Catalog.CatalogDictionary.Data["Lang"]).Data));

        Assert.Equal("Certificate of Authenticity 7KQ4-M2X3", title);
        Assert.StartsWith("D:20260301000000", created, StringComparison.Ordinal);
        Assert.Equal("en", language);
    }

    [Fact]
    public void Embeds_only_the_glyphs_it_draws()
    {
        var pdf = Demo.Pdf(Demo.Certificate);

        Assert.InRange(pdf.Length, 10_000, 150_000);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    public void Another_program_finds_nothing_wrong_with_the_file(int lines)
    {
        using TempFolder folder = new();
        var file = Path.Combine(folder.Path, "certificate.pdf");
        File.WriteAllBytes(file, Demo.Pdf(Many(lines)));

        var said = Encoding.UTF8.GetString(Tool.Run("qpdf", "--check", file));

        Assert.Contains("No syntax or stream encoding errors found", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void The_QR_code_is_read_back_from_the_printed_page(string page)
    {
        var size = PageSize.Of(page)!;
        var raster = Raster.OfPage(Demo.Pdf(Demo.Certificate with { Page = size }), 1);

        Assert.Equal(Demo.Link, raster.Read(new(size.Width / 2, size.Height / 2, size.Width / 2, size.Height / 2)));
    }

    [Fact]
    public void Without_a_link_there_is_no_QR_code_but_the_code_stands()
    {
        var pdf = Demo.Pdf(Demo.Certificate with { Link = null });

        Assert.Contains("7KQ4-M2X3", PdfReading.Texts(pdf)[0], StringComparison.Ordinal);
        Assert.Null(Raster.OfPage(pdf, 1).Read(new(0, 0, 210, 297)));
    }

    [Fact]
    public void A_link_too_long_for_a_phone_is_refused()
    {
        var certificate = Demo.Certificate with { Link = "https://example.org/" + new string('a', 2000) };

        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf(certificate));

        Assert.Equal("qr-too-dense", refused.Name);
        Assert.Equal(
            "Nothing was written: the QR code of 7KQ4-M2X3 needs 58.4 mm to be read by a phone, and there is room for 45 mm. Choose a shorter base_url or larger labels, or print without links.",
            refused.Message);
    }

    [Fact]
    public void A_caution_longer_than_a_page_is_refused()
    {
        var certificate = Demo.Certificate with { Caution = string.Concat(Enumerable.Repeat(Demo.Certificate.Caution + " ", 60)) };

        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf(certificate));

        Assert.Equal("certificate-wording-too-long", refused.Name);
        Assert.Equal("No certificate was written: the caution and logbook sentence of 7KQ4-M2X3 fill more than a page. Shorten them in certificate.toml.", refused.Message);
    }

    private static CertificateStatement Many(int lines) => Demo.Certificate with
    {
        Lines =
        [
            .. Demo.Certificate.Lines,
            .. Enumerable.Range(1, lines).Select(i => new StatementLine($"note-{i}", $"Further statement {i}", $"Value {i} begins with žluťoučký kůň and goes on over the end of its line, so that it has to be wrapped, until {i} ends")),
        ],
    };
}
