using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class ClosedEditionsAreAccountedForTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Fact]
    public void Numbers_open_without_a_sheet()
    {
        var work = Clean.Without("2/12").Without("11/12").Without("12/12");

        Assert.Equal(["Contradiction: 2/12, 11/12 and 12/12 of “Harbour” are open, though the edition is closed."], FindingsOf.Rule("ClosedEditionsAreAccountedFor", work));
        Assert.Empty(FindingsOf.Rule("ClosedEditionsAreAccountedFor", work.WithEdition(edition => edition with { Closed = "no" })));
        Assert.Empty(FindingsOf.Rule("ClosedEditionsAreAccountedFor", work.WithEdition(edition => edition with { Extent = "partly-known" })));
    }

    [Theory]
    [InlineData("never-printed")]
    [InlineData("void")]
    [InlineData("elsewhere")]
    [InlineData("unknown")]
    public void A_number_with_a_fate_of_its_own_is_accounted_for(string fate)
    {
        Assert.Empty(FindingsOf.Rule("ClosedEditionsAreAccountedFor", Clean.Without("2/12").WithNumber("numbered", 2, fate)));
    }

    [Fact]
    public void A_matrix_not_yet_decided_on()
    {
        var work = Clean.WithMatrix(matrix => matrix with { What = "plate", Fate = "undecided" });

        Assert.Equal(["Query: The edition of “Harbour” is closed, and what becomes of the plate is not yet decided."], FindingsOf.Rule("ClosedEditionsAreAccountedFor", work));
        Assert.Empty(FindingsOf.Rule("ClosedEditionsAreAccountedFor", Clean.WithMatrix(matrix => matrix with { Fate = "unknown" })));
    }

    [Fact]
    public void Closed_surely_before_it_was_declared()
    {
        var work = Clean.WithEdition(edition => edition with { ClosedOn = Harbour.On("2026-02") });

        Assert.Equal(["Contradiction: The edition of “Harbour” was closed (2026-02) before it was declared (2026-03-05)."], FindingsOf.Rule("ClosedEditionsAreAccountedFor", work));
        Assert.Empty(FindingsOf.Rule("ClosedEditionsAreAccountedFor", Clean.WithEdition(edition => edition with { ClosedOn = Harbour.On("2026-03") })));
    }
}
