using EditionRegister.Domain.Reading.Sizes;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Sizes in free text. An inch is 25.4 mm by definition; the forms are in the manner of catalogues, their figures invented.</summary>
public class SizeReaderTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("15 3/4 x 11 7/8 in. (40 x 30.2 cm)", 400_000, 302_000, Agreement.Agree)]
    [InlineData("310 × 220 mm", 310_000, 220_000, Agreement.OneSystem)]
    [InlineData("300 mm. x 200 mm.", 300_000, 200_000, Agreement.OneSystem)]
    [InlineData("30x20CM", 300_000, 200_000, Agreement.OneSystem)]
    [InlineData("40,2 x 30 cm", 402_000, 300_000, Agreement.OneSystem)]
    [InlineData("1,22 x 0,8 m", 1_220_000, 800_000, Agreement.OneSystem)]
    [InlineData("1,220 x 1,394 mm", 1_220_000, 1_394_000, Agreement.OneSystem)]
    [InlineData("1 220 x 1 394 mm", 1_220_000, 1_394_000, Agreement.OneSystem)]
    [InlineData("22\" x 13 1/2\"", 558_800, 342_900, Agreement.OneSystem)]
    [InlineData("12'' x 9''", 304_800, 228_600, Agreement.OneSystem)]
    [InlineData("12″ × 9”", 304_800, 228_600, Agreement.OneSystem)]
    [InlineData("12 in. by 9 in.", 304_800, 228_600, Agreement.OneSystem)]
    [InlineData("12-inch x 9-inch", 304_800, 228_600, Agreement.OneSystem)]
    [InlineData("5′ 3″ × 2′ 1″", 1_600_200, 635_000, Agreement.OneSystem)]
    [InlineData("5 ft. 3 1/2 in. x 2 feet", 1_612_900, 609_600, Agreement.OneSystem)]
    [InlineData("7½ x 5 in.", 190_500, 127_000, Agreement.OneSystem)]
    [InlineData("7³⁄₈ x 5⅝ in.", 187_325, 142_875, Agreement.OneSystem)]
    [InlineData(".5 x .75 in", 12_700, 19_050, Agreement.OneSystem)]
    [InlineData("12 x 9 (30.5 x 22.9 cm)", 305_000, 229_000, Agreement.Agree)]
    [InlineData("40 x 30.2 cm (15 3/4 x 11 7/8)", 400_000, 302_000, Agreement.Agree)]
    [InlineData("32.5 x 22.2 cm (8 3/4 x 12 3/16 in.)", 325_000, 222_000, Agreement.Differ)]
    public void Height_comes_before_width_and_two_systems_must_agree(string text, long height, long width, Agreement agreement)
    {
        var read = Assert.Single(SizeReader.Read(text).Sizes);

        Assert.Equal((height, width, agreement), (read.Height!.Value, read.Width!.Value, read.Agreement));
        Assert.Equal(text, text[read.Span]);
    }

    // The caption of an exhibition print as the Print Council of America gives it; 25.4 mm to the inch, by hand.
    [Fact]
    public void A_published_caption_is_read()
    {
        var read = SizeReader.Read("18-11/16 in. x 14-5/8 in. (image); 22-1/2 in. x 17-1/2 in. (sheet)").Sizes;

        Assert.Equal([("image", 474_663L, 371_475L), ("sheet", 571_500L, 444_500L)], read.Select(part => (part.Part, part.Height!.Value, part.Width!.Value)));
    }

    [Theory]
    [InlineData("H. 12 in.; W. 9 in.", 304_800, 228_600)]
    [InlineData("h: 310 mm, w: 220 mm", 310_000, 220_000)]
    [InlineData("Höhe 31 cm, Breite 22 cm", 310_000, 220_000)]
    [InlineData("H. 31; L. 22 cm", 310_000, 220_000)]
    [InlineData("alt. 31 x larg. 22 cm", 310_000, 220_000)]
    [InlineData("12 in. high x 9 in. wide", 304_800, 228_600)]
    [InlineData("9 in. wide x 12 in. high", 304_800, 228_600)]
    [InlineData("22 x 31 cm (B x H)", 310_000, 220_000)]
    [InlineData("W x H: 9 x 12 cm", 120_000, 90_000)]
    [InlineData("Ø 30 cm", 300_000, 300_000)]
    [InlineData("diameter: 12 in. (30.5 cm)", 305_000, 305_000)]
    [InlineData("30 cm diam.", 300_000, 300_000)]
    public void Directions_that_are_said_are_followed(string text, long height, long width)
    {
        var read = Assert.Single(SizeReader.Read(text).Sizes);

        Assert.Equal((height, width), (read.Height!.Value, read.Width!.Value));
    }

    [Fact]
    public void Depth_comes_last_unless_it_says_otherwise()
    {
        var order = Assert.Single(SizeReader.Read("H417xW251xD23mm").Sizes);
        var plain = Assert.Single(SizeReader.Read("frame: 795 x 991 x 23 mm").Sizes);

        Assert.Equal((417_000L, 251_000L, 23_000L), (order.Height!.Value, order.Width!.Value, order.Depth!.Value));
        Assert.Equal((795_000L, 991_000L, 23_000L), (plain.Height!.Value, plain.Width!.Value, plain.Depth!.Value));
    }

    [Theory]
    [InlineData("sheet: 14 1/2 x 11 1/4 in. (36.8 x 28.6 cm)image: 7 3/16 x 5 13/16 in. (18.3 x 14.7 cm)", "sheet image")]
    [InlineData("Plate mark: 12 x 9 in.; sheet 15 x 12 in.", "plate sheet")]
    [InlineData("Blatt 31,2 x 22 cm; Platte 20 x 15 cm", "sheet plate")]
    [InlineData("Darst. 20,5 x 15 cm, Bl. 31 x 22 cm", "image sheet")]
    [InlineData("feuille: 31 x 22 cm; cuvette: 20 x 15 cm", "sheet plate")]
    [InlineData("foglio 310 x 220 mm, lastra 200 x 150 mm", "sheet plate")]
    [InlineData("huella: 20 x 15 cm; hoja: 31 x 22 cm", "plate sheet")]
    [InlineData("300 x 225 mm (plate mark), 390 x 310 mm (paper)", "plate sheet")]
    [InlineData("300 x 225 mm image, 390 x 310 mm sheet", "image sheet")]
    [InlineData("300 x 225 mm image 390 x 310 mm sheet", "image sheet")]
    [InlineData("image 300 x 225 mm sheet 390 x 310 mm", "image sheet")]
    [InlineData("image, each: 83 x 190 mm ⏎ secondary support: 155 x 261 mm", "image mount")]
    [InlineData("sheet trimmed to plate (b): 20 x 18 cm", "sheet")]
    [InlineData("image (the sheet was cut down - its first size is unknown): 20 x 18 cm", "image")]
    [InlineData("book (open): 20 x 36 cm", "book (open)")]
    [InlineData("size: 20 x 18 cm", "")]
    public void Parts_are_named_before_or_behind_in_five_languages(string text, string parts)
    {
        Assert.Equal(parts, string.Join(' ', SizeReader.Read(text).Sizes.Select(size => size.Part)));
    }

    [Fact]
    public void One_size_may_be_of_several_parts()
    {
        var read = Assert.Single(SizeReader.Read("Image/Sheet: 51 x 75.6cm (20 1/16 x 29 3/4\")").Sizes);

        Assert.Equal([SizePart.Image, SizePart.Sheet], read.Parts);
    }

    [Theory]
    [InlineData("c. 30 x 20 cm", true, false)]
    [InlineData("30 x 20 cm (approx.)", true, false)]
    [InlineData("unconfirmed: 30 x 20 cm", true, false)]
    [InlineData("12 x 9 in. (irreg.)", false, true)]
    [InlineData("30 x 20 cm, irregular", false, true)]
    public void What_takes_certainty_from_a_size_is_kept(string text, bool isAbout, bool isIrregular)
    {
        var read = Assert.Single(SizeReader.Read(text).Sizes);

        Assert.Equal((isAbout, isIrregular), (read.IsAbout, read.IsIrregular));
    }

    [Theory]
    [InlineData("310 x 220", "“310 x 220” was not read as a size: it has no unit. Write mm, cm or in behind it.")]
    [InlineData("7 71/6 x 5 in.", "“7 71/6 x 5 in.” was not read as a size: no ruler has that fraction. Write it like 7 3/8.")]
    [InlineData("25 1/18 in.", "“25 1/18 in.” was not read as a size: no ruler has that fraction. Write it like 7 3/8.")]
    [InlineData("1,220 x 30 cm", "“1,220 x 30 cm” was not read as a size: its figures can be read in two ways. Write thousands without comma, point or blank, and decimals with a point.")]
    [InlineData("1 220 x 394 mm", "“1 220 x 394 mm” was not read as a size: its figures can be read in two ways. Write thousands without comma, point or blank, and decimals with a point.")]
    [InlineData("30-32 x 20 cm", "“30-32 x 20 cm” was not read as a size: it gives a range. Write the size of one sheet.")]
    [InlineData("30 x 20-22 cm", "“30 x 20-22” was not read as a size: it gives a range. Write the size of one sheet.")]
    [InlineData("0 x 30 cm", "“0 x 30 cm” was not read as a size: a length of it is nothing.")]
    [InlineData("200 x 300 m", "“200 x 300 m” was not read as a size: a length of it is more than 100 metres.")]
    [InlineData("12345678 x 30 cm", "“12345678 x 30 cm” was not read as a size: a length of it is more than 100 metres.")]
    [InlineData("1 x 2 x 3 x 4 cm", "“1 x 2 x 3 x 4 cm” was not read as a size: it gives more lengths than height, width and depth.")]
    public void What_looks_like_a_size_and_is_none_says_why(string text, string whyNot)
    {
        var read = SizeReader.Read(text);

        Assert.Empty(read.Sizes);
        Assert.Equal(whyNot, read.WhyNot);
    }

    [Theory]
    [InlineData("25 in all, 3 in this state")]
    [InlineData("3/12")]
    [InlineData("Harbour, 2026, reduction linocut in 4 colours")]
    [InlineData("running time: 45 min")]
    public void Other_figures_are_left_alone(string text)
    {
        var read = SizeReader.Read(text);

        Assert.Empty(read.Sizes);
        Assert.Null(read.WhyNot);
    }

    [Fact]
    public void A_size_that_stands_beside_an_unreadable_one_is_read()
    {
        var read = SizeReader.Read("sheet: 7 71/6 x 5 in. (18.8 x 12.7 cm)");

        Assert.Equal(("sheet", 188_000L, 127_000L), Assert.Single(read.Sizes) is var size ? (size.Part, size.Height!.Value, size.Width!.Value) : default);
        Assert.NotNull(read.WhyNot);
    }

    [Fact]
    public void In_the_registers_fields_a_size_without_a_unit_is_millimetres()
    {
        Assert.Equal(310_000, SizeReader.Read("310 x 220,", LengthUnit.Millimetre).Sizes[0].Height);
        Assert.Equal(508_000, SizeReader.Read("20 x 30", LengthUnit.Inch).Sizes[0].Height);
    }

    [Theory]
    [InlineData("310 x 220 mm", "310 × 220 mm, height by width")]
    [InlineData("40,2 x 30 cm", "40.2 × 30 cm: 402 × 300 mm, height by width")]
    [InlineData("15 3/4 x 11 7/8 in. (40 x 30.2 cm)", "15 3/4 × 11 7/8 in: 400 × 301.6 mm; in cm it says 40 × 30.2, which agrees")]
    [InlineData("15 3/4 x 11 7/8 in. (40 x 33.2 cm)", "15 3/4 × 11 7/8 in: 400 × 301.6 mm; in cm it says 40 × 33.2, which does not agree; kept is 400 × 332 mm")]
    [InlineData("image: 40 x 30.2 cm (15 3/4 x 11 7/8 in.)", "image: 40 × 30.2 cm: 400 × 302 mm; in inches it says 15 3/4 × 11 7/8, which agrees")]
    [InlineData("22 x 31 cm (B x H)", "22 × 31 cm: 220 × 310 mm, width by height")]
    [InlineData("Ø 300 mm", "300 mm across")]
    [InlineData("300 mm", "300 mm, one length only")]
    [InlineData("H. 12 in.", "12 in: 304.8 mm, height")]
    [InlineData("c. 30 x 20 cm, irregular", "about 30 × 20 cm: 300 × 200 mm, height by width, irregular")]
    [InlineData("image: 300 x 225 mm; sheet: 390 x 310", "image: 300 × 225 mm, height by width; “390 x 310” was not read as a size: it has no unit. Write mm, cm or in behind it.")]
    public void It_says_how_it_was_read(string text, string explained)
    {
        Assert.Equal(explained, SizeReader.Read(text).Explain());
    }
}

public sealed class SizeReaderInGermanTests() : SizeReaderTests("de-DE");

public sealed class SizeReaderInTurkishTests() : SizeReaderTests("tr-TR");
