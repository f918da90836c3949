using CsCheck;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Sizes;

public class LengthTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("310", 310_000, "310")]
    [InlineData("310.5", 310_500, "310.5")]
    [InlineData("310.50", 310_500, "310.5")]
    [InlineData(" 0.001 ", 1, "0.001")]
    [InlineData("1000", 1_000_000, "1000")]
    [InlineData("100000", 100_000_000, "100000")]
    public void Millimetres_are_read_to_the_micrometre(string text, long micrometres, string machine)
    {
        Assert.True(Length.TryParseMillimetres(text, out var length));

        Assert.Equal(micrometres, length.Micrometres);
        Assert.Equal(machine, length.Millimetres);
        Assert.Equal(machine + " mm", length.Show("mm"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("0.000")]
    [InlineData("-1")]
    [InlineData("310,5")]
    [InlineData("1,000")]
    [InlineData("310.5001")]
    [InlineData("310.")]
    [InlineData(".5")]
    [InlineData("31 cm")]
    [InlineData("100000.001")]
    [InlineData("999999999999")]
    [InlineData("1e2")]
    public void What_is_no_length_in_millimetres_is_not_read(string? text)
    {
        Assert.False(Length.TryParseMillimetres(text, out var length));
        Assert.Null(length);
    }

    // One inch is 25.4 mm exactly. The first three: a caption of the Print Council of America (printcouncil.org) and its conversions;
    // the sheet of 22 x 30 in is 558.8 x 762 mm.
    [Theory]
    [InlineData("474.66", "18 11/16 in")]
    [InlineData("371.48", "14 5/8 in")]
    [InlineData("571.5", "22 1/2 in")]
    [InlineData("558.8", "22 in")]
    [InlineData("762", "30 in")]
    [InlineData("25.4", "1 in")]
    [InlineData("12.7", "1/2 in")]
    [InlineData("25.3", "1 in")]
    [InlineData("0.1", "1/16 in")]
    public void Inches_are_whole_with_a_common_fraction(string millimetres, string shown)
    {
        Assert.True(Length.TryParseMillimetres(millimetres, out var length));

        Assert.Equal(shown, length.Show("in"));
    }

    [Fact]
    public void Every_length_is_read_back_from_its_machine_form()
    {
        Gen.Long[1, Length.Largest].Sample(micrometres =>
            Length.TryParseMillimetres(new Length(micrometres).Millimetres, out var read) && read.Micrometres == micrometres);
    }

    [Fact]
    public void A_length_of_nothing_and_an_unknown_unit_are_our_mistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Length(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Length(Length.Largest + 1));
        Assert.Throws<ArgumentException>(() => new Length(1).Show("cm"));
    }
}

public sealed class LengthInGermanTests() : LengthTests("de-DE");

public sealed class LengthInTurkishTests() : LengthTests("tr-TR");
