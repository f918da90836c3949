using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class LeftOutSheetsBearNoNumberTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _seven = Clean.The("7/12").ShownCode;
    private readonly string _leftOut = Clean.The("left out").ShownCode;

    [Theory]
    [InlineData("left-out", "left out")]
    [InlineData("spare", "a spare")]
    [InlineData("pulled", "not sorted yet")]
    public void A_number_given_to_a_sheet_that_is_not_kept(string standing, string words)
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Standing = standing, Pencilled = null });

        Assert.Equal([$"Contradiction: 7/12 of “Harbour” ({_seven}) is {words}, and has a place in the edition."], FindingsOf.Rule("LeftOutSheetsBearNoNumber", work));
    }

    [Fact]
    public void A_number_of_the_edition_on_a_sheet_held_out()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Standing = "held-out" });

        Assert.Equal([$"Contradiction: 7/12 of “Harbour” ({_seven}) is held out as a proof, and has a place in the edition itself."], FindingsOf.Rule("LeftOutSheetsBearNoNumber", work));
    }

    [Theory]
    [InlineData("13/13", "Contradiction")]
    [InlineData("A/P", "Query")]
    [InlineData("T/P 1/2", "Query")]
    public void A_number_pencilled_on_a_sheet_left_out(string pencilled, string severity)
    {
        var work = Clean.WithSheet("left out", sheet => sheet with { Pencilled = pencilled });

        Assert.Equal([$"{severity}: {pencilled} is pencilled on {_leftOut} of “Harbour”, which is left out."], FindingsOf.Rule("LeftOutSheetsBearNoNumber", work));
    }

    [Theory]
    [InlineData("void")]
    [InlineData("T/P")]
    public void Words_on_a_sheet_left_out_are_good_practice(string pencilled)
    {
        Assert.Empty(FindingsOf.Rule("LeftOutSheetsBearNoNumber", Clean.WithSheet("left out", sheet => sheet with { Pencilled = pencilled })));
    }
}
