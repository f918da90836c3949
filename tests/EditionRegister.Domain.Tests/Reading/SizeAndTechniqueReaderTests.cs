using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Sizes and techniques in free text. An inch is 25.4 mm by definition; ids of the Getty AAT by a published mapping.</summary>
public sealed class SizeAndTechniqueReaderTests
{
    [Theory]
    [InlineData("15 3/4 x 11 7/8 in. (40 x 30.2 cm)", 400_000, 302_000, Agreement.Agree)]
    [InlineData("image: 300 × 225 mm", 300_000, 225_000, Agreement.OneSystem)]
    [InlineData("22\" x 13 1/2\"", 558_800, 342_900, Agreement.OneSystem)]
    [InlineData("40,2 x 30 cm", 402_000, 300_000, Agreement.OneSystem)]
    [InlineData("7½ x 5 in.", 190_500, 127_000, Agreement.OneSystem)]
    [InlineData("32.5 x 22.2 cm (8 3/4 x 12 3/16 in.)", 325_000, 222_000, Agreement.Differ)]
    public void Height_comes_before_width_and_two_systems_must_agree(string text, long height, long width, Agreement agreement)
    {
        var read = Assert.Single(SizeReader.Read(text));

        Assert.Equal((height, width, agreement), (read.Height, read.Width, read.Agreement));
    }

    [Fact]
    public void Parts_run_together_are_told_apart()
    {
        var read = SizeReader.Read("sheet: 14 1/2 x 11 1/4 in. (36.8 x 28.6 cm)image: 7 3/16 x 5 13/16 in. (18.3 x 14.7 cm)");

        Assert.Equal([("sheet", 368_000L, 286_000L), ("image", 183_000L, 147_000L)], read.Select(part => (part.Part, part.Height, part.Width!.Value)));
    }

    [Fact]
    public void Techniques_colours_and_support_are_found_and_the_rest_is_kept()
    {
        var read = TechniqueReader.Read("Reduction linocut in 4 colours with chine collé on Japanese paper");

        Assert.Equal(["reduction-linocut", "chine-colle"], read.Techniques.Select(technique => technique.Word));
        Assert.Equal((4, "Japanese paper"), (read.Colours, read.Support));
        Assert.Empty(read.Left);
    }

    [Theory]
    [InlineData("Etching and aquatint on paper", "300041365 300041366")]
    [InlineData("Soft ground etching", "300041376")]
    [InlineData("wood engraving", "300041402")]
    [InlineData("Farbholzschnitt", "300041412")]
    public void Verified_ids_are_given(string text, string ids)
    {
        Assert.Equal(ids, string.Join(' ', TechniqueReader.Read(text).Techniques.Select(technique => technique.Aat)));
    }
}
