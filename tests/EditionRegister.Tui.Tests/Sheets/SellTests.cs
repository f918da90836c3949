using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Tests.PlanChest;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Selling, with the papers that go with it.</summary>
public sealed class SellTests
{
    [Fact]
    public async Task A_sale_is_recorded_and_said()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s", "“Harbour at Low Water” 9/12");
        var asked = (house.Form.Title, house.Form["Price"], house.Form["Currency"]);

        await house.FillAsync(("Buyer", "ines vargoy"), ("Price", "175"));

        Assert.Equal(("Sell “Harbour at Low Water” 9/12", "180.00", "EUR"), asked);
        Assert.Equal("1 sheet sold to Inés Vargøy for 175.00 EUR, 2027-03-01.", house.Message);
        Assert.Equal(("Inés Vargøy", "with Inés Vargøy"), (house.WhoseIs(Harbour("9")), house.WhereIs(Harbour("9"))));
        Assert.Equal(17_500, house.Sheet(Harbour("9")).Ownership[^1].Price);
    }

    [Fact]
    public async Task A_certificate_and_a_label_come_with_the_sale_and_it_is_said_where_they_are()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var (code, exports) = (house.Sheet(Harbour("9")).ShownCode, house.Register.Folder.Exports);
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Certificate", "yes"), ("Label", "yes"), ("First label", "4"));

        Assert.Equal(
            $"1 sheet sold to Inés Vargøy for 180.00 EUR, 2027-03-01. 1 certificate issued: {code}-C1. Written to {exports}: certificate-{code}-C1.pdf. 1 label on 1 sheet. Written to {exports}: labels-{code}.pdf.",
            house.Message);
        Assert.Equal([$"labels-{code}.pdf", $"certificate-{code}-C1.pdf"], house.House.Desk.Written.Latest.Select(Path.GetFileName));
        Assert.Equal($"{code}-C1", house.Sheet(Harbour("9")).ValidCertificate!.Serial);
        Assert.All([$"certificate-{code}-C1.pdf", $"labels-{code}.pdf"], file => Assert.Equal("%PDF-"u8, File.ReadAllBytes(Path.Combine(exports, file)).AsSpan(0, 5)));
    }

    [Fact]
    public async Task A_certificate_that_stands_goes_along_as_it_is()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var (one, nine, exports) = (house.Sheet(Harbour("1")).ShownCode, house.Sheet(Harbour("9")).ShownCode, house.Register.Folder.Exports);
        await house.PressOnAsync(Harbour("1, 9"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Certificate", "yes"));

        Assert.Equal(
            $"2 sheets sold to Inés Vargøy for 180.00 EUR each, 2027-03-01. 1 certificate issued: {nine}-C1. 1 certificate stood already. Written to {exports}: certificate-{one}-C1.pdf, certificate-{nine}-C1.pdf.",
            house.Message);
    }

    [Fact]
    public async Task The_sale_stands_where_the_certificate_is_refused()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.InscribeImpressions.Run(Harbour("9"), new WhatStandsOnIt { Pencilled = "10/12" });
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Certificate", "yes"));

        Assert.StartsWith("1 sheet sold to Inés Vargøy for 180.00 EUR, 2027-03-01. The sale stands. No certificate was issued for ", house.Message, StringComparison.Ordinal);
        Assert.Equal("Inés Vargøy", house.WhoseIs(Harbour("9")));
        Assert.Null(house.Sheet(Harbour("9")).ValidCertificate);
    }

    [Fact]
    public async Task The_sale_stands_where_the_label_is_refused()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Label", "yes"), ("Label sheet", "stickers"));

        Assert.Equal(
            "1 sheet sold to Inés Vargøy for 180.00 EUR, 2027-03-01. The sale stands. No labels were written: there is no label sheet “stickers”. Choose one of these: a4-2x7, a4-3x8, a4-4x10, letter-3x10.",
            house.Message);
    }

    [Fact]
    public async Task A_buyer_nobody_knows_is_recorded_as_such()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer is", "nobody knows"), ("Price", ""), ("Collected", "no"));

        Assert.Equal("1 sheet sold to a buyer not known, 2027-03-01.", house.Message);
        Assert.Equal(("an owner not known", "in Studio › Plan chest › Drawer 1"), (house.WhoseIs(Harbour("9")), house.WhereIs(Harbour("9"))));
    }

    [Fact]
    public async Task A_buyer_new_to_the_address_book_is_recorded_in_the_same_go()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Orla Finn"), ("Buyer is", "new person"));

        Assert.Equal("Orla Finn is in the address book, as person 13. 1 sheet sold to Orla Finn for 180.00 EUR, 2027-03-01.", house.Message);
        Assert.Equal("Orla Finn", house.WhoseIs(Harbour("9")));
    }

    [Fact]
    public async Task That_a_new_buyer_was_recorded_is_said_where_the_sale_is_refused_and_saving_again_records_them_once()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Orla Finn"), ("Buyer is", "new person"), ("Net", "500"));
        var problem = house.Form.Problem;
        await house.FillAsync(("Net", "100"));

        Assert.Equal("Orla Finn is in the address book, as person 13. But: What the owner receives is more than the price. Nothing else was changed. Give the net price as a part of the price.", problem);
        Assert.Equal("1 sheet sold to Orla Finn for 180.00 EUR, 2027-03-01.", house.Message);
        Assert.Single(house.Register.LookAround.Book().People.Values, person => person.Name == "Orla Finn");
    }

    [Theory]
    [InlineData("Buyer is", "in the book", "Buyer is needed: a name, or choose “nobody knows” under it. Nothing was changed.")]
    [InlineData("Buyer", "Nobody Known", "Nobody called “Nobody Known” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.")]
    [InlineData("Price", "a lot", "“a lot” is no amount in EUR: ")]
    [InlineData("Price", "-5", "“-5” is no amount in EUR: ")]
    [InlineData("Currency", "shells", "“shells” is no currency the register knows: write three letters, such as EUR, GBP or USD.")]
    [InlineData("Date", "soon", "“soon” is no date that can be read: ")]
    [InlineData("First label", "0", "“0” is no whole number from 1.")]
    public async Task What_is_not_right_is_said_and_nothing_is_sold(string field, string typed, string problem)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", field == "Buyer is" ? "" : "Inés Vargøy"), (field, typed));

        Assert.StartsWith(problem, house.Form.Problem, StringComparison.Ordinal);
        Assert.Equal("Mira Tolland", house.WhoseIs(Harbour("9")));
    }

    [Fact]
    public async Task A_buyer_that_is_named_is_not_one_that_nobody_knows()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Buyer is", "nobody knows"));

        Assert.Equal("Buyer is “Inés Vargøy”, so somebody knows: choose another answer, or empty Buyer.", house.Form.Problem);
    }

    [Fact]
    public async Task Amounts_are_read_in_the_currency_of_the_form()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Price", "30000"), ("Currency", "jpy"));

        Assert.Equal("1 sheet sold to Inés Vargøy for 30000 JPY, 2027-03-01.", house.Message);
        Assert.Equal((30_000L, "JPY"), (house.Sheet(Harbour("9")).Ownership[^1].Price, house.Sheet(Harbour("9")).Ownership[^1].Currency));
    }

    [Fact]
    public async Task A_sheet_that_another_window_sold_meanwhile_is_not_sold_twice()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");
        house.Register.SellImpressions.Run(Harbour("9"), new("Joost Averink"), new());

        await house.FillAsync(("Buyer", "Inés Vargøy"));

        Assert.Equal(
            $"{house.Sheet(Harbour("9")).ShownCode} is no longer the maker's: it belongs to Joost Averink. Nothing was changed. If the owner passed it on, name the owner with --seller; with --from where it was given, exchanged or bequeathed.",
            house.Form.Problem);
    }

    [Fact]
    public async Task A_sale_that_was_collected_is_undone_with_its_move()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9-10"), "s");
        await house.FillAsync(("Buyer", "Inés Vargøy"));

        await house.PressAsync("u");

        Assert.Equal("2 sheets: last move and transfer taken back.", house.Message);
        Assert.Equal(("Mira Tolland", "in Studio › Plan chest › Drawer 1"), (house.WhoseIs(Harbour("9-10")), house.WhereIs(Harbour("9-10"))));
    }

    [Fact]
    public async Task A_consigned_sheet_is_sold_through_who_has_it_and_the_net_is_worked_out()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("5"), "s");

        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Price", "200"));

        var sold = house.Sheet(Harbour("5")).Ownership[^1];
        Assert.Equal((4L, 12_000L), (sold.Agent, sold.Net));
    }

    [Fact]
    public async Task As_last_time_takes_neither_buyer_nor_price()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressOnAsync(Harbour("9"), "s");
        await house.FillAsync(("Buyer", "Inés Vargøy"), ("Price", "150"), ("Certificate", "yes"), ("Sold through", "Joost Averink"), ("Note", "at the fair"));
        await house.PressOnAsync(Harbour("10"), "s");

        house.Form.Fill(house.House.Desk.Answers.Last(house.Form)!, all: false);

        Assert.Equal((null, "180.00", null), (house.Form["Buyer"], house.Form["Price"], house.Form["Note"]));
        Assert.Equal(("yes", "Joost Averink"), (house.Form["Certificate"], house.Form["Sold through"]));
    }

    [Fact]
    public async Task A_first_sheet_is_sold_in_a_register_without_buyers()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.PressOnAsync(SmallStudio.Pile(1, "1"), "s");

        await house.FillAsync(("Buyer", "Ada Brook"), ("Buyer is", "new person"), ("Price", "40"), ("Certificate", "yes"));

        Assert.StartsWith("Ada Brook is in the address book, as person 4. 1 sheet sold to Ada Brook for 40.00 EUR, 2027-03-01. The sale stands. No certificate was issued: ", house.Message, StringComparison.Ordinal);
    }
}
