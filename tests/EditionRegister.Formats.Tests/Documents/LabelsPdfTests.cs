using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents;
using EditionRegister.Formats.Templates;

namespace EditionRegister.Formats.Tests.Documents;

public sealed class LabelsPdfTests
{
    private const string LongTitle = "The Whole of the Harbour as Seen from the Loft at Low Tide, with Two Boats and Åse Mending Nets";

    [Fact]
    public void Twenty_four_labels_from_position_twenty_spill_onto_a_second_sheet()
    {
        var pdf = Demo.Pdf("a4-3x8", Demo.Labels(24), firstPosition: 20);

        var texts = PdfReading.Texts(pdf);
        Assert.Equal(2, texts.Count);
        Assert.Equal([5, 19], texts.Select(text => text.Split("7KQ4-M2X3").Length - 1));
        Assert.Contains("5/24", texts[0], StringComparison.Ordinal);
        Assert.Contains("6/24", texts[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a4-3x8", "Heron", 0, 0)]
    [InlineData("a4-2x7", LongTitle, 0, 0)]
    [InlineData("a4-4x10", "Heron", 1, -0.5)]
    [InlineData("a4-4x10", "Donaudampfschifffahrtsgesellschaft", 0, 0)]
    [InlineData("letter-3x10", LongTitle, -1, 1)]
    public void No_letter_comes_nearer_than_a_millimetre_and_a_half_to_the_edge_of_its_label(string name, string title, double right, double down)
    {
        var sheet = LabelSheets.Named(name, null);
        PrinterOffset offset = new(right, down);
        var safe = sheet.Place(sheet.PerSheet, 1, offset)
            .Select(place => new Box(place.Box.X + 1.5, place.Box.Y + 1.5, place.Box.Width - 3, place.Box.Height - 3))
            .ToList();

        var letters = PdfReading.Letters(Demo.Pdf(name, Demo.Labels(sheet.PerSheet, title), 1, offset), 1);

        Assert.True(letters.Count > sheet.PerSheet * 40);
        Assert.All(letters, letter => Assert.True(safe.Any(box => box.Holds(letter.Box)), letter.ToString()));
    }

    [Theory]
    [InlineData("a4-3x8", 7)]
    [InlineData("a4-4x10", 1)]
    [InlineData("letter-3x10", 2)]
    public void Each_code_is_read_back_from_its_own_label(string name, int firstPosition)
    {
        var sheet = LabelSheets.Named(name, null);
        var labels = Demo.Labels(12);
        var raster = Raster.OfPage(Demo.Pdf(name, labels, firstPosition), 1, dpi: 300);

        var read = sheet.Place(12, firstPosition).Select(place => raster.Read(place.Box));

        Assert.Equal(labels.Select(label => label.Link), read);
    }

    [Theory]
    [InlineData("a4-3x8", 210, 297)] // ISO 216
    [InlineData("letter-3x10", 215.9, 279.4)]
    public void The_page_is_the_sheet(string name, double width, double height)
    {
        var (read, high) = PdfReading.Size(Demo.Pdf(name, Demo.Labels(1)), 1);

        Assert.Equal(width, read, tolerance: 0.2);
        Assert.Equal(height, high, tolerance: 0.2);
    }

    [Fact]
    public void A_long_title_is_wrapped_and_whole()
    {
        var letters = PdfReading.Letters(Demo.Pdf("a4-4x10", Demo.Labels(1, LongTitle)), 1);

        Assert.Contains(LongTitle.Replace(" ", "", StringComparison.Ordinal), string.Concat(letters.Select(letter => letter.Letter)), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_link_the_text_has_the_whole_label()
    {
        var withLink = PdfReading.Letters(Demo.Pdf("a4-4x10", [new(["1/5  Heron by the reeds"], "7KQ4-M2X3", Demo.Link)]), 1);
        var without = PdfReading.Letters(Demo.Pdf("a4-4x10", [new(["1/5  Heron by the reeds"], "7KQ4-M2X3", null)]), 1);

        Assert.True(without.Max(letter => letter.Box.X) > withLink.Max(letter => letter.Box.X));
        Assert.EndsWith("7KQ4-M2X3", string.Concat(without.Select(letter => letter.Letter)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_labels_give_the_same_bytes_in_any_culture()
    {
        var first = Demo.Pdf("a4-3x8", Demo.Labels(30), 3, new(0.5, -0.25));
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

        try
        {
            Assert.Equal(first, Demo.Pdf("a4-3x8", Demo.Labels(30), 3, new(0.5, -0.25)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Text_that_does_not_fit_at_six_points_is_refused_by_its_code()
    {
        var title = string.Join(' ', Enumerable.Repeat(LongTitle, 6));

        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf("a4-4x10", Demo.Labels(1, title)));

        Assert.Equal("label-text-too-long", refused.Name);
        Assert.Equal("No labels were written: the text of 7KQ4-M2X3 does not fit on its label even at 6 points. Choose larger labels or fewer lines.", refused.Message);
    }

    [Fact]
    public void A_long_title_beside_a_large_QR_code_makes_it_smaller_but_not_unreadable()
    {
        var labels = Demo.Labels(1, LongTitle);
        var raster = Raster.OfPage(Demo.Pdf("a4-4x10", labels), 1, dpi: 300);

        Assert.Equal(labels[0].Link, raster.Read(LabelSheets.Named("a4-4x10", null).Place(1).Single().Box));
    }

    [Fact]
    public void A_label_too_narrow_for_its_code_is_refused()
    {
        var sheet = LabelSheets.Named("a4-3x8", null) with { LabelWidth = 14 };
        using MemoryStream stream = new();

        var refused = Assert.Throws<RefusedException>(() => LabelsPdf.Write(stream, sheet, [new(["1/5"], "7KQ4-M2X3", null)], 1, default));

        Assert.Equal("label-too-narrow", refused.Name);
        Assert.Equal("No labels were written: the code 7KQ4-M2X3 does not fit on its label, or not beside its QR code. Choose larger labels, or print without links.", refused.Message);
        Assert.Equal(0, stream.Length);
    }

    [Fact]
    public void A_QR_code_too_dense_for_its_label_is_refused_by_its_code()
    {
        Label label = new(["1/5  Heron"], "7KQ4-M2X3", "https://example.org/" + new string('a', 300));

        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf("a4-4x10", [label]));

        Assert.Equal("qr-too-dense", refused.Name);
        Assert.Equal("Nothing was written: the QR code of 7KQ4-M2X3 needs 25.4 mm to be read by a phone, and there is room for 24.3 mm. Choose a shorter base_url or larger labels, or print without links.", refused.Message);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    public void A_position_that_the_sheet_does_not_have_is_refused(int position)
    {
        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf("a4-3x8", Demo.Labels(1), position));

        Assert.Equal("label-position", refused.Name);
        Assert.Equal($"No labels were written: a4-3x8 has the positions 1 to 24, not {position}. Count along the rows from the top left.", refused.Message);
    }

    [Fact]
    public void No_labels_are_refused()
    {
        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf("a4-3x8", []));

        Assert.Equal("labels-none", refused.Name);
        Assert.Equal("No labels were written: nothing was chosen. Name at least one impression.", refused.Message);
    }

    [Fact]
    public void An_offset_that_pushes_a_label_off_its_paper_is_refused()
    {
        var refused = Assert.Throws<RefusedException>(() => Demo.Pdf("a4-3x8", Demo.Labels(1), 1, new(-2, 0)));

        Assert.Equal("label-off-paper", refused.Name);
        Assert.Equal("No labels were written: with this printer offset the label of 7KQ4-M2X3 would run off the paper of a4-3x8. Make right_mm and down_mm under [printer] smaller.", refused.Message);
    }
}
