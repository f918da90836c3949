using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Inventory;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Moves;

public sealed class TransfersTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public TransfersTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.RecordPerson.Run(new NewPerson { Name = "Ada Brook" });
        _register.RecordPerson.Run(new NewPerson { Name = "Adam Fenwright" });
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Given_exchanged_and_bequeathed_each_owner_has_it_from_the_one_before()
    {
        _register.PassSheets.Run(SmallEdition.Numbers("1"), "Ada Brook", null, new Passing(MoveKind.Given, null) { Collected = true });
        _register.PassSheets.Run(SmallEdition.Numbers("1"), "Adam Fenwright", "Ada Brook", new Passing(MoveKind.Exchanged, null) { Against = "his Kite, 2/10", Note = "at the fair" });
        _register.PassSheets.Run(SmallEdition.Numbers("1"), null, null, new Passing(MoveKind.Bequeathed, null));

        var links = _register.Sheet(1).Ownership;
        Assert.Equal([Owner.Known(1), Owner.Known(3), Owner.Known(4), Owner.Unknown], links.Select(link => link.To));
        Assert.Equal("against his Kite, 2/10; at the fair", links[2].Note);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void The_buyer_gives_it_back_and_it_is_the_sellers_and_free_again()
    {
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Ada Brook"), new Sale { Price = 18_000, Currency = "EUR", Collected = true });
        var sold = FreeToSell.Of(_register.LookAround.Work(1), _register.Sheet(1));
        _register.TakeBackFromBuyer.Run(SmallEdition.Numbers("1"), "Drawer 1", new BuyersReturn { Refund = 18_000, Currency = "EUR" });

        var sheet = _register.Sheet(1);
        Assert.Equal((Owner.Known(1), Position.InPlace(2), 18_000L), (sheet.Whose, sheet.Where, sheet.Ownership[^1].Price!.Value));
        Assert.Equal(("no", "yes"), (sold, FreeToSell.Of(_register.LookAround.Work(1), sheet)));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_resale_is_told_apart_and_its_net_is_not_worked_out_from_an_old_consignment()
    {
        _register.Consign.Run(SmallEdition.Numbers("1"), "Quay Gallery", rate: 4_000);
        var first = _register.SellImpressions.Sell(SmallEdition.Numbers("1"), new SalePeople("Ada Brook"), new Sale { Price = 10_000, Currency = "EUR" });
        var second = _register.SellImpressions.Sell(SmallEdition.Numbers("1"), new SalePeople("Adam Fenwright", Seller: "Ada Brook"), new Sale { Price = 90_000, Currency = "EUR" });

        Assert.Equal((0, 1), (first.Resold, second.Resold));
        Assert.Equal((6_000L, null), (_register.Sheet(1).Ownership[1].Net, _register.Sheet(1).Ownership[2].Net));
        Assert.Null(_register.Sheet(1).Ownership[2].Agent);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_reservation_is_fulfilled_by_the_one_it_is_kept_for_and_by_taking_the_sale_back_it_stands_again()
    {
        _register.ReserveSheets.Run(SmallEdition.Numbers("1"), "Ada Brook");
        var kept = FreeToSell.Of(_register.LookAround.Work(1), _register.Sheet(1));
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Ada Brook"), new Sale());
        var fulfilled = _register.Sheet(1).Reservations.Single().Standing;
        _register.TakeLinkBack.Run(SmallEdition.Numbers("1"), move: false, transfer: true);

        Assert.Equal(("no", "fulfilled", "standing"), (kept, fulfilled, _register.Sheet(1).Reservations.Single().Standing));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Another_buyer_needs_a_word_and_lifts_it()
    {
        _register.ReserveSheets.Run(SmallEdition.Numbers("1-2"), "Ada Brook");

        var refused = Assert.Throws<RefusedException>(() => _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Adam Fenwright"), new Sale()));
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Adam Fenwright"), new Sale { DespiteReservation = true });

        Assert.Equal("reserved-for-another", refused.Name);
        Assert.Equal(("lifted", "standing"), (_register.Sheet(1).Reservations.Single().Standing, _register.Sheet(2).Reservations.Single().Standing));
    }

    [Fact]
    public void Somebody_not_named_may_be_whoever_buys()
    {
        _register.ReserveSheets.Run(SmallEdition.Numbers("1"), null);

        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople(null), new Sale());

        Assert.Equal("fulfilled", _register.Sheet(1).Reservations.Single().Standing);
    }

    [Fact]
    public void What_is_on_approval_is_sold_to_the_one_who_looks_at_it_or_through_them()
    {
        Going approval = new(MoveKind.OnApproval, null);
        _register.SendAway.Run(SmallEdition.Numbers("1-2"), new SentTo("Quay Gallery"), approval);

        var refused = Assert.Throws<RefusedException>(() => _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Ada Brook"), new Sale()));
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Ada Brook", Agent: "Quay Gallery"), new Sale());
        _register.SellImpressions.Run(SmallEdition.Numbers("2"), new SalePeople("Quay Gallery"), new Sale());

        Assert.Equal("on-approval-with-another", refused.Name);
        Assert.Equal((Owner.Known(3), Owner.Known(2)), (_register.Sheet(1).Whose, _register.Sheet(2).Whose));
    }
}
