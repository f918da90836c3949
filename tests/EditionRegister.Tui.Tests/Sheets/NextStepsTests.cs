using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Asking;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Everything else that may happen next to sheets, behind one key.</summary>
public sealed class NextStepsTests
{
    [Fact]
    public async Task Only_what_can_happen_to_a_sheet_as_it_is_is_offered()
    {
        await using var house = await TestHouse.OnDemoAsync();

        var here = await OfferedAsync(house, "9");
        var consigned = await OfferedAsync(house, "5");
        var sold = await OfferedAsync(house, "3");
        house.Register.RecordMishap.Run(Harbour("9"), MoveKind.Destroyed);
        var gone = await OfferedAsync(house, "9");

        Assert.Equal("r l a k p c t e g x b m", here);
        Assert.Equal("r l a k p c t e o g x b m", consigned);
        Assert.Equal("l a k p c t e g x b w h y m", sold);
        Assert.Equal("f", gone);
    }

    [Fact]
    public async Task Sheets_are_reserved_and_let_go_again_with_one_key()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "a");
        await house.PressAsync("r");
        await house.FillAsync(("For whom", "Inés Vargøy"), ("Until", "2027-04"));
        var (said, kept) = (house.Message, house.Sheet(Harbour("9")).StandingReservation);

        await house.PressAsync("u");

        Assert.Equal("2 sheets reserved for Inés Vargøy, until 2027-04.", said);
        Assert.NotNull(kept);
        Assert.Equal("2 sheets: reservation lifted.", house.Message);
        Assert.Null(house.Sheet(Harbour("9")).StandingReservation);
    }

    [Fact]
    public async Task A_reserved_sheet_is_sold_to_another_only_when_that_is_meant()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.ReserveSheets.Run(Harbour("9"), "Inés Vargøy");
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Joost Averink"));
        var problem = house.Form.Problem;
        await house.FillAsync(("Despite reservation", "yes"));

        Assert.StartsWith($"{house.Sheet(Harbour("9")).ShownCode} is reserved for Inés Vargøy.", problem, StringComparison.Ordinal);
        Assert.Equal("Joost Averink", house.WhoseIs(Harbour("9")));
    }

    [Fact]
    public async Task What_is_lent_to_somebody_new_is_said_with_its_terms_and_taken_back_by_u()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "a");
        await house.PressAsync("l");
        await house.FillAsync(("To whom", "Harbour Museum"), ("They are", "new organisation"), ("Until", "2027-09"), ("Agreement", "loan 7"), ("Insured for", "240"));
        var (said, where) = (house.Message, house.WhereIs(Harbour("9")));

        await house.PressAsync("u");

        Assert.Equal($"Harbour Museum is in the address book, as person {house.Register.LookAround.Book().People.Keys.Max()}. 1 sheet lent to Harbour Museum, 2027-03-01, until 2027-09, under “loan 7”, insured for 240.00 EUR.", said);
        Assert.Equal("with Harbour Museum", where);
        Assert.Equal("in Studio › Plan chest › Drawer 1", house.WhereIs(Harbour("9")));
    }

    [Fact]
    public async Task A_buyer_gives_a_sheet_back_with_the_price_offered_as_the_refund()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("3"), "a");
        await house.PressAsync("y");
        var offered = house.Form["Given back"];

        await house.FillAsync(("Place", "Drawer 1"));

        Assert.Equal("180.00", offered);
        Assert.Equal("1 sheet returned by the buyer, 180.00 EUR given back, 2027-03-01; it belongs again to the one who sold it.", house.Message);
        Assert.Equal(("Mira Tolland", "in Studio › Plan chest › Drawer 1"), (house.WhoseIs(Harbour("3")), house.WhereIs(Harbour("3"))));
    }

    [Fact]
    public async Task A_theft_is_reported_elsewhere_too_and_what_is_found_again_goes_into_its_drawer()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "a");
        await house.PressAsync("m");
        var caution = house.Form.Caution;
        await house.FillAsync(("What happened", "stolen"));
        var said = house.Message;
        await house.PressOnAsync(Harbour("9"), "a");
        await house.PressAsync("f");
        await house.FillAsync(("Place", "Drawer 1"));

        Assert.Equal("Report a theft to the police and to the insurer; the register is no proof of title.", caution);
        Assert.StartsWith("1 sheet stolen, 2027-03-01; its number stays given.", said, StringComparison.Ordinal);
        Assert.Equal("1 sheet found again, Studio › Plan chest › Drawer 1, 2027-03-01.", house.Message);
    }

    private static async Task<string> OfferedAsync(TestHouse house, string number)
    {
        await house.PressOnAsync(Harbour(number), "a");
        var offered = string.Join(' ', Assert.IsType<Choice>(house.House.Asking).Among.Select(one => one.Key));
        await house.PressAsync("Esc");

        return offered;
    }
}
