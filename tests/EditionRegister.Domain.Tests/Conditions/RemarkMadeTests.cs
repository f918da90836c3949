using EditionRegister.Domain.Conditions;

namespace EditionRegister.Domain.Tests.Conditions;

public class RemarkMadeTests
{
    [Theory]
    [InlineData("foxing", "foxing", null, null, null)]
    [InlineData("dented corner@lower left: 3 mm", "dented-corner", "lower left", "3 mm", null)]
    [InlineData(" Tear @ right edge, 2 cm from below ", "tear", "right edge, 2 cm from below", null, null)]
    [InlineData("other: ratio 3:4 #12", "other", null, "ratio 3:4", 12L)]
    [InlineData("stain@a@b", "stain", "a@b", null, null)]
    [InlineData("hole:no#4", "hole", null, "no#4", null)]
    public void A_remark_is_a_term_a_place_a_note_and_a_picture(string text, string term, string? position, string? note, long? picture)
    {
        var read = RemarkMade.Read(text);

        Assert.Equal(new RemarkMade(term, position, note, picture), read);
        Assert.Equal(read, RemarkMade.Read(read.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("@lower left")]
    [InlineData(": 3 mm")]
    [InlineData("foxing #99999999999999999999999")]
    public void What_begins_with_no_term_is_refused(string text) => Assert.Equal("remark-misread", Assert.Throws<RefusedException>(() => RemarkMade.Read(text)).Name);

    [Fact]
    public void Every_term_has_a_word_a_name_and_a_meaning_of_its_own()
    {
        Assert.Equal(ConditionTerm.All.Count, ConditionTerm.All.Select(term => term.Word).Distinct().Count());
        Assert.Equal(ConditionTerm.All.Count, ConditionTerm.All.Select(term => term.Meaning).Distinct().Count());
        Assert.All(ConditionTerm.All, term => Assert.Matches("^[a-z]+(-[a-z]+)*$", term.Word));
        Assert.Contains("gloves and a mask", ConditionTerm.Of("mould")!.Care, StringComparison.Ordinal);
        Assert.Null(ConditionTerm.Of("foxing")!.Care);
    }
}
