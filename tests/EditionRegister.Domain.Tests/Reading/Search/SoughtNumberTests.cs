using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Reading.Search;

/// <summary>Which numbers are meant by one that is typed.</summary>
public sealed class SoughtNumberTests
{
    [Theory]
    [InlineData("A/P 2", "artists-proof", "roman", 5, 2, true)]
    [InlineData("A/P 2", "artists-proof", "arabic", 5, 2, true)]
    [InlineData("A/P 2", "artists-proof", "arabic", 5, 3, false)]
    [InlineData("A/P 2", "printers-proof", "arabic", 5, 2, false)]
    [InlineData("A/P II", "artists-proof", "arabic", 5, 2, false)]
    [InlineData("A/P II/V", "artists-proof", "roman", 5, 2, true)]
    [InlineData("A/P II/V", "artists-proof", "roman", 6, 2, false)]
    [InlineData("A/P 2/5", "artists-proof", "roman", 5, 2, false)]
    [InlineData("A/P", "artists-proof", "roman", 5, 4, true)]
    [InlineData("3/12", "numbered", "arabic", 12, 3, true)]
    [InlineData("3/12", "numbered", "arabic", null, 3, false)]
    [InlineData("3/12", "numbered", "roman", 12, 3, false)]
    [InlineData("H.C. C", "hors-commerce", "letters", 5, 3, true)]
    [InlineData("H.C. C", "hors-commerce", "roman", 100, 100, true)]
    [InlineData("H.C. C", "hors-commerce", "roman", 5, 3, false)]
    [InlineData("B.A.T.", "bon-a-tirer", "none", 1, 1, true)]
    public void A_place_of_a_numbering_is_meant_by_kind_number_notation_and_size_as_far_as_they_are_typed(string text, string kind, string notation, int? size, int place, bool meant)
    {
        Numbering numbering = new(1, 1, 1, kind, notation, size, size is null ? "unknown" : "stated", []);

        Assert.Equal(meant, Number(text).Fits(numbering, place));
    }

    [Fact]
    public void A_size_that_somebody_was_not_sure_of_is_the_size()
    {
        var numbering = new Numbering(1, 1, 1, "numbered", "arabic", null, "unknown", []) { Hedge = "about", HedgedSize = 50 };

        Assert.True(Number("3/50").Fits(numbering, 3));
        Assert.False(Number("3/40").Fits(numbering, 3));
    }

    [Theory]
    [InlineData("A/P 2", "A/P II/V", true)]
    [InlineData("A/P 2", "2/5 E.A.", true)]
    [InlineData("A/P 2", "artist's proof II", true)]
    [InlineData("A/P 2", "P/P 2", false)]
    [InlineData("3/12", "Harbour 3/12 M. Tolland", true)]
    [InlineData("3/12", "3/50", false)]
    [InlineData("W/P 2", "working proof 2", true)]
    [InlineData("C.T.P.", "colour trial proof", true)]
    [InlineData("A/P", "épreuve d'artiste", true)]
    [InlineData("3/12", "second state", false)]
    public void What_an_inscription_says_is_met_however_it_says_it(string typed, string inscribed, bool meant)
    {
        var said = NumbersThere.Said(SaidOfNumber.Of(EditionStatementReader.Read(inscribed)));

        Assert.Equal(meant, said is { } there && Number(typed).Fits(there));
    }

    [Theory]
    [InlineData("A/P 2", "A/P II/V", "roman", true)]
    [InlineData("H.C. C", "H.C. C", "letters", true)]
    [InlineData("H.C. C", "H.C. C", "roman", true)]
    [InlineData("3/12", "3/12", null, true)]
    [InlineData("3/12", "perhaps 3/12", null, false)]
    public void A_pencil_that_nobody_read_when_it_was_recorded_is_read_plainly(string typed, string pencilled, string? expected, bool meant)
    {
        var there = NumbersThere.OnPencil(null, pencilled, Notation.TryFind(expected, out var notation) ? notation : null, OwnWords.None);

        Assert.Equal(meant, there is { } known && Number(typed).Fits(known));
    }

    [Fact]
    public void What_was_read_when_the_pencil_was_recorded_goes_before_its_text()
    {
        SaidOfNumber says = new("proof") { Series = "A/P", Number = 2, Size = 5, Notation = "roman" };

        var there = NumbersThere.OnPencil(says, "3/12", null, OwnWords.None);

        Assert.Equal(new NumbersThere("artists-proof", Notation.Roman, 5, 2, 2), there);
        Assert.Null(NumbersThere.OnPencil(new SaidOfNumber("declined"), "3/12", null, OwnWords.None));
    }

    private static SoughtNumber Number(string text) => Assert.Single(Sought.Read(text).Parts).Number!;
}
