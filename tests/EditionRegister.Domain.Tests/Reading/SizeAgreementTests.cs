using CsCheck;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Two systems side by side agree where what parts them is explained by a step of the coarser and half a step of the finer, as they are written.</summary>
public sealed class SizeAgreementTests
{
    // 15 3/4 in are 400.05 mm; 11 7/8 in are 301.625 mm.
    [Theory]
    [InlineData("11 7/8 x 15 3/4 in. (30.2 x 40 cm)", Agreement.Agree)]
    [InlineData("11 7/8 x 15 3/4 in. (30.6 x 40 cm)", Agreement.Differ)]
    [InlineData("11 11/16 x 15 3/4 in. (30.2 x 40 cm)", Agreement.Differ)]
    [InlineData("12 x 15 3/4 in. (31 x 40 cm)", Agreement.Agree)]
    [InlineData("12 x 16 in. (30.5 x 40.6 cm)", Agreement.Agree)]
    [InlineData("12 x 16 in. (30.5 x 41.6 cm)", Agreement.Differ)]
    [InlineData("12 x 16 in. (305 x 406 mm)", Agreement.Agree)]
    public void The_steps_of_both_are_as_they_are_written(string text, Agreement agreement)
    {
        Assert.Equal(agreement, Assert.Single(SizeReader.Read(text).Sizes).Agreement);
    }

    [Fact]
    public void A_finding_has_its_sentence()
    {
        var apart = Assert.Single(SizeReader.Read("15 3/4 x 11 7/8 in. (40 x 33.2 cm)").Sizes);
        var turned = Assert.Single(SizeReader.Read("27.4 x 18.4 cm (7 1/4 x 10 13/16 in.)").Sizes);
        var same = Assert.Single(SizeReader.Read("15 3/4 x 11 7/8 in. (40 x 30.2 cm)").Sizes);

        Assert.Equal("15 3/4 × 11 7/8 in and 40 × 33.2 cm do not say the same: they lie 30.4 mm apart, and rounding explains 3.7 mm.", apart.Disagreement());
        Assert.Equal("27.4 × 18.4 cm and 7 1/4 × 10 13/16 in do not say the same: they agree once one of them is turned, so that height stands before width.", turned.Disagreement());
        Assert.Null(same.Disagreement());
    }

    [Fact]
    public void What_the_register_writes_by_any_rule_is_read_again_and_agrees() =>
        Gen.Select(Gen.Long[10_000, 3_000_000], Gen.Long[10_000, 3_000_000], Gen.Int[0, SizeStyle.All.Count - 1]).Sample((height, width, style) =>
        {
            var written = SizeStyle.All[style].Show(new Domain.Sizes.Size(new Length(height), new Length(width)));

            var read = Assert.Single(SizeReader.Read(written).Sizes);

            Assert.NotEqual(Agreement.Differ, read.Agreement);
            Assert.InRange(read.Height!.Value - height, -800, 10_000);
            Assert.InRange(read.Width!.Value - width, -800, 10_000);
        });
}
