using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Tests.Refusals;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Sets;

/// <summary>What lies in a copy goes where the copy goes and passes on with it; everything else is the copy's own.</summary>
public sealed class SetMovesTests : IDisposable
{
    private readonly Studio _studio = new();

    // “Tide Table”, work 4, is a portfolio; 1/4 and 2/4 of “Harbour” lie in its copies 1/2 and 2/2.
    public SetMovesTests()
    {
        _studio.Register.MakeSet.Run(4, "portfolio", "colophon");
        _studio.Register.ChangeSetParts.Add(4, [1]);
        _studio.Register.GatherSet.ByNumber(4, copies: null);
    }

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_copy_sold_takes_its_sheet_along_and_keeps_the_price_to_itself()
    {
        var sold = _studio.Register.SellImpressions.Run(Numbers(2, "1"), new("Ada Brook"), new Sale { Price = 40_000, Currency = "EUR", Collected = true });

        Assert.Equal(1, sold);
        Assert.Equal((3, 40_000), (Copy(1).Whose!.Person!.Value, Copy(1).Ownership[^1].Price!.Value));
        Assert.Equal((3, null), (Sheet(1).Whose!.Person!.Value, Sheet(1).Ownership[^1].Price));
        Assert.Equal(Copy(1).Where, Sheet(1).Where);
        Assert.Equal("made", Sheet(2).Ownership[^1].Kind);
        Assert.DoesNotContain(_studio.Register.CheckRegister.Run(), finding => finding.Rule == "SetsAreWhole");
    }

    [Fact]
    public void Taken_back_it_is_taken_back_with_its_sheet()
    {
        var before = Sheet(1);
        _studio.Register.Consign.Run(Numbers(2, "1"), "Quay Gallery");
        Assert.Equal(Position.With(2), Sheet(1).Where);

        _studio.Register.TakeLinkBack.Run(Numbers(2, "1"), move: true, transfer: false);

        Assert.Equal(before.Whereabouts, Sheet(1).Whereabouts);
    }

    [Fact]
    public void A_step_the_sheet_made_alone_stays()
    {
        _studio.Register.PutAway.Run(Pile(1, "1"), "Loft");
        _studio.Register.PutAway.Run(Numbers(2, "1"), "Studio › Drawer 1");
        Assert.Equal("Loft", _studio.Register.LookAround.Book().PathOf(Sheet(1).Where!.Place));

        _studio.Register.TakeLinkBack.Run(Numbers(2, "1"), move: true, transfer: false);

        Assert.Equal("Loft", _studio.Register.LookAround.Book().PathOf(Sheet(1).Where!.Place));
    }

    [Fact]
    public void It_stays_where_that_is_said_and_comes_where_it_was_named_itself()
    {
        _studio.Register.PutAway.Run(Numbers(2, "1") with { WithSets = false }, "Loft");
        Assert.NotEqual(Copy(1).Where, Sheet(1).Where);

        _studio.Register.PutAway.Run(new ImpressionChoice { Edition = 2, Sheets = $"2, {Sheet(2).ShownCode}" }, "Loft");

        Assert.Equal(Copy(2).Where, Sheet(2).Where);
        Assert.Single(Sheet(2).Whereabouts, link => link.To == Copy(2).Where);
    }

    [Fact]
    public void A_price_and_an_inscription_are_the_copy_s_own()
    {
        _studio.Register.PriceImpressions.Run(Numbers(2, "2"), 40_000, "EUR", null);
        _studio.Register.InscribeImpressions.Run(Numbers(2, "2"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });

        Assert.Equal((40_000, "yes"), (Copy(2).Asking!.Value, Copy(2).Signed));
        Assert.Equal((null, "no"), (Sheet(2).Asking, Sheet(2).Signed));
    }

    [Fact]
    public void One_entry_for_each_work_under_one_batch()
    {
        _studio.Register.Consign.Run(Numbers(2, "1-2"), "Quay Gallery");

        var entries = _studio.Register.LookAround.Logbook(3);
        Assert.Equal(["work/1", "work/4"], entries.Select(entry => entry.Root).Where(root => root.StartsWith("work", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Single(entries.Select(entry => entry.Batch).Distinct());
    }

    private Impression Copy(int number) => _studio.Register.LookAround.Work(4).Impressions[number - 1];

    private Impression Sheet(int number) => _studio.Register.LookAround.Work(1).Impressions[number - 1];
}
