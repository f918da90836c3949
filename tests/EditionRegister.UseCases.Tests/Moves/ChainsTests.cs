using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.UseCases.Tests.Moves;

public sealed class ChainsTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public ChainsTests() => _register = SmallEdition.Make(_temp.Register);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_consigned_print_is_at_the_gallery_and_still_the_makers()
    {
        _register.Consign.Run(SmallEdition.Numbers("2"), "quay gallery", rate: 4_000);

        var sheet = _register.Sheet(2);
        Assert.Equal((Position.With(2), Owner.Known(1)), (sheet.Where, sheet.Whose));
        Assert.Equal(4_000, sheet.Whereabouts[^1].Rate);
    }

    [Fact]
    public void A_sale_from_consignment_names_the_gallery_and_works_the_net_price_out()
    {
        _register.Consign.Run(SmallEdition.Numbers("2"), "Quay Gallery", rate: 3_333);

        _register.SellImpressions.Run(SmallEdition.Numbers("2"), new SalePeople(null), new Sale { Price = 18_000, Currency = "EUR" });

        // 33.33 % of 180.00 is 59.994, of which whole cents are the gallery's; worked out by hand.
        var sold = _register.Sheet(2).Ownership[^1];
        Assert.Equal((Owner.Unknown, 2L, 18_000L, 12_001L), (sold.To, sold.Agent!.Value, sold.Price!.Value, sold.Net!.Value));
    }

    [Fact]
    public void What_was_sold_is_not_sold_again_by_the_maker_but_by_its_owner()
    {
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Quay Gallery"), new Sale { Price = 10_000, Currency = "EUR" });

        var again = Assert.Throws<RefusedException>(() => _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople(null), new Sale()));
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople(null, Seller: "Quay Gallery"), new Sale { Price = 15_000, Currency = "EUR" });

        Assert.Equal("sold-already", again.Name);
        Assert.Equal(Owner.Unknown, _register.Sheet(1).Whose);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Theory]
    [InlineData("2026-01-31", "before-printed")]
    [InlineData("2025/2026-01", "before-printed")]
    [InlineData("2026-01/2026-02", null)]
    [InlineData("2026", null)]
    public void Only_a_sure_conflict_of_dates_is_refused(string date, string? refusal)
    {
        var thrown = Record.Exception(() => _register.PutAway.Run(SmallEdition.Numbers("3"), "Studio", RecordedDate.Read(date)));

        Assert.Equal(refusal, (thrown as RefusedException)?.Name);
    }

    [Fact]
    public void One_deed_on_several_sheets_is_one_entry()
    {
        var before = _register.LookAround.Head().N;

        _register.Consign.Run(SmallEdition.Numbers("1-4, A/P I"), "Quay Gallery");

        Assert.Equal(before + 1, _register.LookAround.Head().N);
    }
}
