using EditionRegister.Domain.Reading.Papers;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>The sheet of a paper: in figures, or by the standard; never by an old name alone.</summary>
public sealed class PaperSheetTests
{
    [Theory]
    [InlineData("rag 56 x 76 cm", 560_000, 760_000)]
    [InlineData("rag, sheets of 22 x 30 in", 558_800, 762_000)]
    [InlineData("sheet size: 22 x 30 in. (55.9 x 76.2 cm)", 559_000, 762_000)]
    [InlineData("rag 250g 56x76cm", 560_000, 760_000)]
    [InlineData("imperial, 56 x 76 cm", 560_000, 760_000)]
    [InlineData("140 lb (22 x 30 in), sheet 28 x 38 cm", 280_000, 380_000)]
    public void Figures_are_taken(string text, long height, long width)
    {
        var sheet = PaperReader.Read(text).Sheet!;

        Assert.Equal((height, width), (sheet.Height.Micrometres, sheet.Width.Micrometres));
    }

    // The table of ISO 216, as encyclopedia.kids.net.au has it.
    [Theory]
    [InlineData("A0", 1189, 841)]
    [InlineData("A1", 841, 594)]
    [InlineData("A2", 594, 420)]
    [InlineData("A3", 420, 297)]
    [InlineData("A4", 297, 210)]
    [InlineData("A5", 210, 148)]
    [InlineData("A6", 148, 105)]
    [InlineData("B0", 1414, 1000)]
    [InlineData("B1", 1000, 707)]
    [InlineData("B2", 707, 500)]
    [InlineData("B3", 500, 353)]
    [InlineData("B4", 353, 250)]
    public void Names_of_the_standard_are_sizes(string name, long high, long wide)
    {
        var read = PaperReader.Read($"cartridge, {name}, 160 g");

        Assert.Equal((name, high * 1_000, wide * 1_000), (read.SheetName, read.Sheet!.Height.Micrometres, read.Sheet.Width.Micrometres));
        Assert.Equal("cartridge", read.Name);
    }

    [Theory]
    [InlineData("A11")]
    [InlineData("A04")]
    [InlineData("A4b")]
    [InlineData("A4.5")]
    [InlineData("C4")]
    [InlineData("kozoA4")]
    public void What_only_looks_like_a_name_of_the_standard_is_none(string text)
    {
        Assert.Null(PaperReader.Read(text).Sheet);
    }

    [Theory]
    [InlineData("Imperial, laid", "Imperial")]
    [InlineData("laid double elephant", "double elephant")]
    [InlineData("half imperial", "half imperial")]
    [InlineData("super royal wove", "super royal")]
    public void An_old_name_is_kept_and_no_size_is_taken_from_it(string text, string old)
    {
        var read = PaperReader.Read(text);

        Assert.Null(read.Sheet);
        Assert.Equal(text, read.Name);
        Assert.Equal([$"“{old}” is an old name of sheets that differed by maker and time, so no size is taken from it. Measure the sheet."], read.Notes);
    }

    [Fact]
    public void Two_systems_that_differ_are_noted()
    {
        var read = PaperReader.Read("rag, 22 x 30 in (56 x 79.5 cm)");

        Assert.Equal(["22 × 30 in and 56 × 79.5 cm do not say the same: they lie 33 mm apart, and rounding explains 6.8 mm."], read.Notes);
    }
}
