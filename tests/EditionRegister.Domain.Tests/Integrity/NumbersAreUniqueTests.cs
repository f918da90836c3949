using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

// Each number is on one impression, and a bon à tirer is one per edition: Tamarind definitions, after a second-hand copy.
public class NumbersAreUniqueTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _four = Clean.The("4/12").ShownCode;
    private readonly string _seven = Clean.The("7/12").ShownCode;

    [Fact]
    public void A_number_pencilled_on_two_sheets()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = "4/12" });

        Assert.Equal([$"Contradiction: 4/12 of “Harbour” is pencilled on 2 sheets: {_four} and {_seven}."], FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void The_size_beside_the_number_makes_no_other_number_of_it()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = "4/15" });

        Assert.Equal([$"Contradiction: 4/12 of “Harbour” is pencilled on 2 sheets: {_four} and {_seven}."], FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void A_sheet_without_a_place_in_the_register_is_asked_about()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Numbering = null, Number = null, Pencilled = "4/12" });

        Assert.Equal([$"Query: 4/12 of “Harbour” is pencilled on 2 sheets: {_four} and {_seven}."], FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void A_sheet_that_took_the_place_of_one_destroyed_is_a_note()
    {
        var work = Clean
            .WithSheet("4/12", sheet => sheet with { Whereabouts = [.. sheet.Whereabouts, new(9, 1, 2, "destroyed", sheet.Where, Position.Gone, Harbour.On("2026-05-01"), RecordedDate.None, null, null)] })
            .WithSheet("7/12", sheet => sheet with { Pencilled = "4/12" });

        Assert.Equal([$"Note: 4/12 of “Harbour” is pencilled on 2 sheets: {_four} and {_seven}. Destroyed since: {_four}."], FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void Two_bons_a_tirer()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Pencilled = "B.A.T.", Numbering = null, Number = null });

        Assert.Equal([$"Query: B.A.T. of “Harbour” is pencilled on 2 sheets: {_seven} and {work.The("B.A.T.").ShownCode}, and an edition has one."], FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void A_number_given_twice()
    {
        var work = Clean.WithSheet("7/12", sheet => sheet with { Number = 4, Pencilled = null });

        Assert.Equal([$"Contradiction: 4/12 of “Harbour” is given to 2 sheets: {_four} and {_seven}."], FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void The_same_number_in_another_notation_kind_or_edition_is_another_number()
    {
        var second = Clean.Editions[0] with { Id = 10, Ordinal = 2, Numberings = [Harbour.Numbers(31, 1, "numbered", "arabic", 12), Harbour.Numbers(32, 2, "numbered", "roman", 12)] };
        var work = (Clean with { Editions = [.. Clean.Editions, second] })
            .With(Harbour.Sheet(301, 1) with { Numbering = 31, Number = 1, Pencilled = "1/12" })
            .With(Harbour.Sheet(302, 2) with { Numbering = 32, Number = 1, Pencilled = "I/XII" });

        Assert.Empty(FindingsOf.Rule("NumbersAreUnique", work));
    }

    [Fact]
    public void Of_somebody_elses_edition_the_size_tells_two_editions_apart()
    {
        var work = (Clean with
        {
            Editions = [Clean.Editions[0] with { Extent = "someone-elses", Numberings = [new Numbering(21, 1, 1, "numbered", "arabic", null, "unknown", [])] }],
            Impressions = [Harbour.Sheet(1, 1) with { Numbering = 21, Pencilled = "3/50" }, Harbour.Sheet(2, 2) with { Numbering = 21, Pencilled = "3/75" }],
        });

        Assert.Empty(FindingsOf.Rule("NumbersAreUnique", work));
        Assert.Equal(
            [$"Query: 3 of “Harbour” is pencilled on 2 sheets: {work.Impressions[0].ShownCode} and {Harbour.Sheet(3, 3).ShownCode}."],
            FindingsOf.Rule("NumbersAreUnique", work.With(Harbour.Sheet(3, 3) with { Numbering = 21, Pencilled = "3/50" })));
    }
}
