using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class SetsAreWholeTests
{
    private const long Fellow = 3;

    private readonly string _seven = Portfolio().The("7/12").ShownCode;
    private readonly string _five = Portfolio().The("5/12").ShownCode;

    [Theory]
    [InlineData("portfolio")]
    [InlineData("exchange")]
    public void A_portfolio_whose_copies_hold_every_part_has_nothing_to_mend(string form) => Assert.Empty(Found(Portfolio(form)));

    [Fact]
    public void Prints_of_several_makers_are_each_their_maker_s_until_the_copy_passes_on() =>
        Assert.Empty(Found(Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Whose = Owner.Known(Fellow) }])));

    [Fact]
    public void A_copy_that_is_being_gathered_lacks_nothing_yet() =>
        Assert.Empty(Found(Holding("7/12", _ => []).WithEdition(edition => edition with { Closed = "no" })));

    [Fact]
    public void A_part_that_is_missing_once_the_edition_is_closed() =>
        Assert.Equal(
            [$"Query: No sheet of “Flood” lies in copy 7/12 of “Harbour” ({_seven}), whose edition is closed."],
            Found(Holding("7/12", copy => [Lies(1, copy)])));

    [Fact]
    public void A_part_that_was_taken_out() =>
        Assert.Equal(
            [$"Query: No sheet of “Flood” lies in copy 7/12 of “Harbour” ({_seven}), and one was taken out."],
            Found(Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Standing = "taken-out" }]).WithEdition(edition => edition with { Closed = "no" })));

    [Fact]
    public void A_sheet_that_stayed_at_home_when_its_copy_went_to_the_gallery() =>
        Assert.Equal(
            [$"Query: 5/12 ({Lies(2, Portfolio().The("5/12")).ShownCode}) of “Flood” lies in copy 5/12 of “Harbour” ({_five}), and is in studio › plan chest; the copy is with Tidewater Gallery."],
            Found(Holding("5/12", copy => [Lies(1, copy), Lies(2, copy) with { Where = Position.InPlace(Harbour.Drawer) }])));

    [Fact]
    public void A_sheet_sold_out_of_its_copy()
    {
        var work = Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Whose = Owner.Known(Harbour.Buyer), HasPassedOn = true }]);

        Assert.Equal(
            [$"Contradiction: 7/12 ({Lies(2, work.The("7/12")).ShownCode}) of “Flood” lies in copy 7/12 of “Harbour” ({_seven}) and belongs to Ivo Brandt; the copy belongs to Mara Quill."],
            Found(work));
    }

    [Fact]
    public void In_an_exchange_a_sheet_handed_over_before_its_copy_is_no_matter() =>
        Assert.Empty(Found(Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Whose = Owner.Known(Fellow), HasPassedOn = true }], "exchange")));

    [Fact]
    public void What_nobody_knows_is_nowhere_else() =>
        Assert.Empty(Found(Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Where = Position.Unknown, Whose = Owner.Unknown }])));

    [Fact]
    public void Another_number_is_only_worth_knowing() =>
        Assert.Equal(
            [$"Note: 8/12 ({Lies(2, Portfolio().The("7/12")).ShownCode}) of “Flood” lies in copy 7/12 of “Harbour” ({_seven}), whose number is another."],
            Found(Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Number = "8/12", Ordinal = 8 }])));

    [Fact]
    public void A_sheet_that_is_gone_and_a_sheet_of_no_part()
    {
        var work = Holding("7/12", copy => [Lies(1, copy), Lies(2, copy) with { Where = Position.Gone }, Lies(9, copy)]);
        var code = Lies(2, work.The("7/12")).ShownCode;

        Assert.Equal(
            [
                $"Contradiction: 7/12 ({code}) of “Flood” lies in copy 7/12 of “Harbour” ({_seven}), and is gone for good.",
                $"Contradiction: 7/12 ({Lies(9, work.The("7/12")).ShownCode}) lies in copy 7/12 of “Harbour” ({_seven}), and its work is no part of the set.",
            ],
            Found(work));
    }

    private static IReadOnlyList<string> Found(Work work) => FindingsOf.Rule("SetsAreWhole", work);

    /// <summary>Every numbered sheet of the harbour edition as a copy with a sheet of “Ebb” and one of “Flood” in it, where the copy is and whose it is.</summary>
    private static Work Portfolio(string form = "portfolio")
    {
        var clean = Harbour.Clean();

        return clean with
        {
            Set = new PrintSet(1, 1, form, "colophon", null, [new SetPart(1, 1, 1, "Ebb"), new SetPart(2, 2, 2, "Flood")]),
            Impressions = [.. clean.Impressions.Select(sheet => sheet.Number is null ? sheet : sheet with { SetSheets = [Lies(1, sheet, clean), Lies(2, sheet, clean)] })],
        };
    }

    private static Work Holding(string number, Func<Impression, IReadOnlyList<SetSheet>> sheets, string form = "portfolio") =>
        Portfolio(form).WithSheet(number, copy => copy with { SetSheets = sheets(copy) });

    private static SetSheet Lies(long part, Impression copy) => Lies(part, copy, Harbour.Clean());

    private static SetSheet Lies(long part, Impression copy, Work work) =>
        new(copy.Id * part, (copy.Id * 10) + part, part, Harbour.Code((copy.Id * 10) + part), work.NumberOf(copy), "in", copy.Where, copy.Whose)
        {
            KindWord = work.NumberingOf(copy)?.KindWord, Ordinal = copy.Number, HasPassedOn = copy.Ownership.Count > 1,
        };
}
