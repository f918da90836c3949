using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Techniques in free text. Ids of the Getty AAT by a published mapping.</summary>
public sealed class SizeAndTechniqueReaderTests
{
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
