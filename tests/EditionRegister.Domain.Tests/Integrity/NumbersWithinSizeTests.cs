using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class NumbersWithinSizeTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _seven = Clean.The("7/12").ShownCode;
    private readonly string _proof = Clean.The("A/P II/II").ShownCode;

    [Fact]
    public void A_number_given_beyond_the_size()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Number = 13 });

        Assert.Equal([$"Contradiction: Sheet {_seven} is given no. 13 of “Harbour”, whose numbers end at 12/12."], FindingsOf.Rule("NumbersWithinSize", work));
    }

    [Fact]
    public void A_number_pencilled_beyond_the_size()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = "14/15" }).WithSheet("A/P II/II", sheet => sheet with { Pencilled = "A/P III" });

        Assert.Equal(
            [
                $"Contradiction: 14/15 is pencilled on {_seven} of “Harbour”, whose numbers end at 12/12.",
                $"Contradiction: A/P III is pencilled on {_proof} of “Harbour”, whose artist's proofs end at A/P II/II.",
            ],
            FindingsOf.Rule("NumbersWithinSize", work));
    }

    [Theory]
    [InlineData("whole", "Contradiction")]
    [InlineData("someone-elses", "Query")]
    public void A_number_no_sheet_can_bear(string extent, string severity)
    {
        var work = Clean.WithEdition(edition => edition with { Extent = extent }).WithSheet("7/12", sheet => sheet with { Pencilled = "13/12" });

        Assert.Equal([$"{severity}: “13/12” is pencilled on {_seven} of “Harbour”, and no sheet of any edition can bear that number."], FindingsOf.Rule("NumbersWithinSize", work));
    }

    [Fact]
    public void An_open_edition_has_no_end()
    {
        var work = Clean
            .WithSheet("7/12", sheet => sheet with { Number = 700, Pencilled = "700" })
            .WithNumbering("numbered", numbering => numbering with { Size = null, SizeState = "open" });

        Assert.Empty(FindingsOf.Rule("NumbersWithinSize", work));
    }
}
