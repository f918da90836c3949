using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class TotalsMatchTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Fact]
    public void Numbers_missing_from_the_list()
    {
        var work = Clean.WithNumbering("numbered", numbering => numbering with { Numbers = [.. numbering.Numbers.Where(number => number.Ordinal is not (4 or 5 or 6 or 9))] });

        Assert.Equal(
            [
                "Contradiction: 4/12 to 6/12 and 9/12 of “Harbour” are missing from the list of numbers, which should run from 1/12 to 12/12.",
                .. new[] { "4/12", "5/12", "6/12", "9/12" }.Select(number =>
                    $"Contradiction: {number} of “Harbour” ({Clean.The(number).ShownCode}) has a number that is missing from the list of numbers."),
            ],
            FindingsOf.Rule("TotalsMatch", work));
    }

    [Fact]
    public void Numbers_too_many_in_the_list()
    {
        var work = Clean.WithNumbering("artists-proof", numbering => numbering with { Numbers = [.. numbering.Numbers, new(1, 1, 3, "open", null), new(2, 1, 1, "open", null)] });

        Assert.Equal(
            [
                "Contradiction: A/P I/II of “Harbour” is there more than once in the list of numbers.",
                "Contradiction: no. 3 of “Harbour” is in the list of numbers, which should run from A/P I/II to A/P II/II.",
            ],
            FindingsOf.Rule("TotalsMatch", work));
    }

    [Fact]
    public void More_sheets_than_numbers()
    {
        var work = Clean.With(Harbour.Sheet(400, 18) with { Numbering = 22 });

        Assert.Equal(
            ["Contradiction: 3 sheets have a place in “Harbour”, which has 2 numbers A/P I/II to A/P II/II."],
            FindingsOf.Rule("TotalsMatch", work));
    }

    [Theory]
    [InlineData("never-printed", "never printed")]
    [InlineData("void", "void")]
    [InlineData("elsewhere", "elsewhere")]
    public void A_sheet_whose_number_is_not_to_be_had(string fate, string words)
    {
        var work = Clean.WithNumber("numbered", 7, fate);

        Assert.Equal(
            [$"Contradiction: 7/12 of “Harbour” ({Clean.The("7/12").ShownCode}) is here, but its number is recorded as {words}."],
            FindingsOf.Rule("TotalsMatch", work));
    }

    [Fact]
    public void Size_and_kind_of_edition_that_do_not_fit()
    {
        Assert.Equal(
            ["Contradiction: The size of “Harbour”, numbered edition is missing, but recorded as stated."],
            FindingsOf.Rule("TotalsMatch", Clean.WithNumbering("numbered", numbering => numbering with { Size = null })));
        Assert.Equal(
            ["Contradiction: The edition of “Harbour” is limited, but its numbers are open."],
            FindingsOf.Rule("TotalsMatch", Clean.WithNumbering("numbered", numbering => numbering with { Size = null, SizeState = "open" })));
        Assert.Equal(
            ["Contradiction: The edition of “Harbour” is open, but its numbers run 1/12 to 12/12."],
            FindingsOf.Rule("TotalsMatch", Clean.WithEdition(edition => edition with { Kind = "open" })));
        Assert.Equal(
            ["Contradiction: The edition of “Harbour” is unique, but its numbers run 1/12 to 12/12."],
            FindingsOf.Rule("TotalsMatch", Clean.WithEdition(edition => edition with { Kind = "unique" })));
    }

    // Intended, declared and printed so far are three facts.
    [Fact]
    public void Another_size_intended_is_no_finding()
    {
        Assert.Empty(FindingsOf.Rule("TotalsMatch", Clean.WithEdition(edition => edition with { Intended = 20 })));
    }
}
