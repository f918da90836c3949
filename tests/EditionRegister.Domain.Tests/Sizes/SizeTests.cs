using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Sizes;

public class SizeTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("310 x 220")]
    [InlineData("310x220")]
    [InlineData("310.0 × 220")]
    public void A_size_is_height_by_width(string text)
    {
        Assert.True(Size.TryParseMillimetres(text, out var size));

        Assert.Equal(310_000, size.Height.Micrometres);
        Assert.Equal(220_000, size.Width.Micrometres);
        Assert.Equal("310 × 220 mm", size.ToString());
        Assert.Equal("12 3/16 × 8 11/16 in", size.Show("in"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("310")]
    [InlineData("310 x")]
    [InlineData("310 x 220 x 5")]
    [InlineData("310,5 x 220")]
    [InlineData("0 x 220")]
    public void What_is_no_size_is_not_read(string? text)
    {
        Assert.False(Size.TryParseMillimetres(text, out var size));
        Assert.Null(size);
    }
}

public sealed class SizeInGermanTests() : SizeTests("de-DE");

public sealed class SizeInTurkishTests() : SizeTests("tr-TR");
