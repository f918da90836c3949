using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Sizes;

/// <summary>
/// Sizes written by rule. Check values: the example of Cataloging Cultural Objects, part 3, "198 x 233 x 82 cm (78 x 91 3/4 x 32 1/4 inches)",
/// and Graphic Materials of the Library of Congress, 3D2 (37.1 is 38 cm, inches go up to the next quarter).
/// </summary>
public class SizeStyleTests(string culture = "") : InCulture(culture)
{
    [Fact]
    public void As_measured_in_the_registers_unit()
    {
        Assert.Equal("371 × 250.5 mm", SizeStyle.Millimetres.Show(Of(371_000, 250_500)));
        Assert.Equal("14 5/8 × 9 7/8 in", SizeStyle.Inches.Show(Of(371_000, 250_500)));
    }

    [Theory]
    [InlineData(1_980_000, "198 cm (78 inches)")]
    [InlineData(2_330_000, "233 cm (91 3/4 inches)")]
    [InlineData(820_000, "82 cm (32 1/4 inches)")]
    [InlineData(310_500, "31.05 cm (12 1/4 inches)")]
    [InlineData(1_000, "0.1 cm (1/4 inches)")]
    public void Cco_has_centimetres_as_measured_and_the_nearest_quarter_of_an_inch(long micrometres, string written)
    {
        Assert.Equal(written, new SizeStyle(SizeWriting.Cco, "mm").Show(new Length(micrometres)));
    }

    [Fact]
    public void Cco_has_its_example()
    {
        Assert.Equal("198 × 233 cm (78 × 91 3/4 inches)", new SizeStyle(SizeWriting.Cco, "in").Show(Of(1_980_000, 2_330_000)));
    }

    [Theory]
    [InlineData(371_000, "38 cm (14 3/4 in.)")]
    [InlineData(820_000, "82 cm (32 1/2 in.)")]
    [InlineData(254_000, "26 cm (10 in.)")]
    [InlineData(254_001, "26 cm (10 1/4 in.)")]
    public void The_library_of_congress_goes_up_to_the_next_centimetre_and_quarter(long micrometres, string written)
    {
        Assert.Equal(written, new SizeStyle(SizeWriting.Lc, "mm").Show(new Length(micrometres)));
    }

    // 371 mm are 14.606 in, 300.4 mm are 11.827 in: computed by hand.
    [Theory]
    [InlineData(371_000, "371 mm (14 5/8 in.)")]
    [InlineData(300_400, "300 mm (11 7/8 in.)")]
    [InlineData(300_500, "301 mm (11 7/8 in.)")]
    [InlineData(1, "1 mm (1/8 in.)")]
    public void Its_option_has_the_nearest_millimetre_and_the_next_eighth(long micrometres, string written)
    {
        Assert.Equal(written, new SizeStyle(SizeWriting.LcMillimetres, "mm").Show(new Length(micrometres)));
    }

    [Fact]
    public void Every_writing_is_found_by_its_word()
    {
        Assert.Equal(["measured", "cco", "lc", "lc-mm"], SizeWriting.All.Select(writing => writing.Word));
        Assert.All(SizeWriting.All, writing => Assert.Same(writing, SizeWriting.Of(writing.Word)));
        Assert.Null(SizeWriting.Of("nearest"));
    }

    private static Size Of(long height, long width) => new(new Length(height), new Length(width));
}

public sealed class SizeStyleInGermanTests() : SizeStyleTests("de-DE");

public sealed class SizeStyleInTurkishTests() : SizeStyleTests("tr-TR");
