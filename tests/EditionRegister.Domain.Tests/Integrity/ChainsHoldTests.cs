using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class ChainsHoldTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _sold = $"3/12 of “Harbour” ({Clean.The("3/12").ShownCode})";

    [Fact]
    public void No_first_link()
    {
        Assert.Equal([$"Contradiction: {_sold} has no first link in its ownership."], Findings(sheet => sheet with { Ownership = [] }));
        Assert.Equal(
            [
                $"Contradiction: {_sold} has no first link in its whereabouts.",
                $"Contradiction: In the whereabouts of {_sold} the links are not numbered from one without a gap: link 1 is numbered 2.",
            ],
            Findings(sheet => sheet with { Whereabouts = [sheet.Whereabouts[1]] }));
    }

    [Fact]
    public void A_gap()
    {
        Assert.Equal(
            [$"Contradiction: In the ownership of {_sold} the links are not numbered from one without a gap: link 2 is numbered 3."],
            Findings(sheet => sheet with { Ownership = [sheet.Ownership[0], sheet.Ownership[1] with { Ordinal = 3 }] }));
    }

    [Fact]
    public void From_where_it_was_not()
    {
        Assert.Equal(
            [$"Contradiction: {_sold} was handed to its owner from studio, but was at studio › plan chest."],
            Findings(sheet => sheet with { Whereabouts = [sheet.Whereabouts[0], sheet.Whereabouts[1] with { From = Position.InPlace(1) }] }));
    }

    [Fact]
    public void Sold_by_somebody_who_did_not_own_it()
    {
        Assert.Equal(
            [$"Contradiction: {_sold} was sold by Tidewater Gallery, but belonged to Mara Quill."],
            Findings(sheet => sheet with { Ownership = [sheet.Ownership[0], sheet.Ownership[1] with { From = Owner.Known(Harbour.Gallery) }] }));
        Assert.Equal(
            [$"Contradiction: {_sold} was sold by Mara Quill to the same owner."],
            Findings(sheet => sheet with { Ownership = [sheet.Ownership[0], sheet.Ownership[1] with { To = Owner.Known(Harbour.Maker) }] }));
    }

    [Fact]
    public void Surely_back_in_time()
    {
        Assert.Equal(
            [$"Contradiction: {_sold} was handed to its owner (2026-04-02) before it was pulled from the press (2026-05), though recorded after it."],
            Findings(sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { Moved = Harbour.On("2026-05") }, sheet.Whereabouts[1]] }));
        Assert.Empty(Findings(sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { Moved = Harbour.On("2026-04") }, sheet.Whereabouts[1]] }));
        Assert.Empty(Findings(sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { Moved = RecordedDate.Read("after the fair") }, sheet.Whereabouts[1]] }));
    }

    [Fact]
    public void Sold_before_it_was_printed()
    {
        Assert.Equal(
            [
                $"Contradiction: {_sold} was sold (2026-01-10) before it was made (2026-03-01), though recorded after it.",
                $"Contradiction: {_sold} was sold (2026-01-10) before it was printed (2026-02-01/2026-03-01).",
            ],
            Findings(sheet => sheet with { Ownership = [sheet.Ownership[0], sheet.Ownership[1] with { Passed = Harbour.On("2026-01-10") }] }));
    }

    [Fact]
    public void After_it_was_gone()
    {
        Assert.Equal([$"Contradiction: {_sold} was put away after it was gone for good (destroyed, 2026-05-01)."], Findings(sheet => Gone(sheet, "destroyed", "put-away")));
        Assert.Empty(Findings(sheet => Gone(sheet, "lost", "found")));
    }

    [Fact]
    public void Gone_on_while_it_was_missing()
    {
        Assert.Equal([$"Contradiction: {_sold} was lent after it was stolen (2026-05-01), and nobody recorded that it was found."], Findings(sheet => Missing(sheet, "stolen", "lent")));
        Assert.Empty(Findings(sheet => Missing(sheet, "stolen", "found")));
        Assert.Empty(Findings(sheet => Missing(sheet, "lost", "stolen")));
    }

    [Fact]
    public void Passed_on_by_nobody()
    {
        Assert.Equal([$"Contradiction: {_sold} was consigned further to Tidewater Gallery, and was in nobody's consignment before."], Findings(sheet => Through(sheet, "lent", "sub-consigned")));
        Assert.Empty(Findings(sheet => Through(sheet, "consigned", "sub-consigned")));
    }

    [Fact]
    public void Places_and_people_that_are_not_there()
    {
        Assert.Equal(
            [$"Contradiction: {_sold} was put in place 77, which the register does not have.", $"Contradiction: {_sold} belongs to person 99, whom the register does not have."],
            Findings(sheet => sheet with
            {
                Whereabouts = [sheet.Whereabouts[0], sheet.Whereabouts[1] with { To = Position.InPlace(77) }],
                Ownership = [sheet.Ownership[0], sheet.Ownership[1] with { To = Owner.Known(99) }],
            }));
    }

    private static Impression Gone(Impression sheet, string end, string then) => sheet with
    {
        Whereabouts =
        [
            .. sheet.Whereabouts,
            new(8, 1, 3, end, sheet.Where, Position.Gone, Harbour.On("2026-05-01"), RecordedDate.None, null, null),
            new(9, 1, 4, then, Position.Gone, Position.InPlace(Harbour.Drawer), Harbour.On("2026-06-01"), RecordedDate.None, null, null),
        ],
    };

    private static Impression Missing(Impression sheet, string end, string then) => sheet with
    {
        Whereabouts =
        [
            .. sheet.Whereabouts,
            new(8, 1, 3, end, sheet.Where, Position.Unknown, Harbour.On("2026-05-01"), RecordedDate.None, null, null),
            new(9, 1, 4, then, Position.Unknown, then == "stolen" ? Position.Unknown : Position.InPlace(Harbour.Drawer), Harbour.On("2026-06-01"), RecordedDate.None, null, null),
        ],
    };

    private static Impression Through(Impression sheet, string first, string second) => sheet with
    {
        Whereabouts =
        [
            .. sheet.Whereabouts,
            new(8, 1, 3, first, sheet.Where, Position.With(Harbour.Maker), Harbour.On("2026-05-01"), RecordedDate.None, null, null),
            new(9, 1, 4, second, Position.With(Harbour.Maker), Position.With(Harbour.Gallery), Harbour.On("2026-06-01"), RecordedDate.None, null, null),
        ],
    };

    private static IReadOnlyList<string> Findings(Func<Impression, Impression> change) => FindingsOf.Rule("ChainsHold", Clean.WithSheet("3/12", change));
}
