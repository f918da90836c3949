using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>
/// Grams per square metre from pounds. Published values: printwiki.org, Grammage (20 lb bond is 75.2); azmanual, p. A-2 (90 lb offset 133.218,
/// 100 lb cover 270.42); timesprinters (50 lb cover 135, 50 lb text 74); a paper merchant's calculator (28 lb on 17 x 22 is 105.3). The trade
/// reckons with 1406.5 where the definitions of pound and inch give 1406.139, so published values are up to 0.03 % above.
/// </summary>
public sealed class PaperWeightTests
{
    private const decimal Trade = 1406.5m;

    [Theory]
    [InlineData("28 lb bond", 105.3)]
    [InlineData("20 lb bond", 75.2)]
    [InlineData("90 lb offset", 133.218)]
    [InlineData("100 lb cover", 270.42)]
    [InlineData("50 lb cover", 135)]
    [InlineData("50# text", 74)]
    public void Grades_fix_the_basis_and_published_grams_are_met(string text, double published)
    {
        var weight = PaperReader.Read(text).Weight!;

        Assert.True(weight.IsWorkedOut);
        Assert.InRange(weight.Grams!.Value / 100.0, published - 0.5, published + 0.5);
    }

    // 453.59237 g to the pound, 500 sheets, 0.00064516 m² to the square inch: 28 lb 105.272, 90 lb 191.7, 140 lb 298.3, 300 lb 639.2, worked out apart from the program.
    [Theory]
    [InlineData("28 lb (17 x 22 in)", 105.27, 374)]
    [InlineData("90 lb (22 x 30 in)", 191.7, 660)]
    [InlineData("140 lb, basis 22 x 30", 298.3, 660)]
    [InlineData("300 lb/22x30", 639.2, 660)]
    [InlineData("90 lb basis 25 x 38", 133.22, 950)]
    public void Pounds_and_basis_give_grams_by_definition_and_nearly_those_of_the_trade(string text, double exact, int squareInches)
    {
        var weight = PaperReader.Read(text).Weight!;

        Assert.Equal(exact, weight.Grams!.Value / 100.0, 0.06);
        Assert.Equal((double)(weight.Pounds!.Value / 100m * Trade / squareInches), weight.Grams.Value / 100.0, 0.2);
    }

    [Theory]
    [InlineData("140 lb")]
    [InlineData("imperial 140 lb")]
    [InlineData("Hill Cover 90 lb")]
    [InlineData("90 lb, 56 x 76 cm")]
    public void Pounds_alone_give_no_grams(string text)
    {
        var weight = PaperReader.Read(text).Weight!;

        Assert.Null(weight.Grams);
        Assert.Equal("the size of sheet that the pounds are counted for is not written, as in 140 lb (22 x 30 in)", weight.WhyNoGrams);
    }

    [Fact]
    public void Grams_that_are_written_stand()
    {
        var weight = PaperReader.Read("rag, 300 gsm (140 lb)").Weight!;

        Assert.Equal((300_00, 300_00, 140_00, false), (weight.Grams!.Value, weight.GramsWritten!.Value, weight.Pounds!.Value, weight.IsWorkedOut));
    }

    [Fact]
    public void A_basis_may_be_metric()
    {
        Assert.Equal(298_27, Grammage.FromPounds(140_00, new Size(new Length(558_800), new Length(762_000))));
    }
}
