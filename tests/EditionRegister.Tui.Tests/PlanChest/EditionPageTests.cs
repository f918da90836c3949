using EditionRegister.Domain;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>Editions as trays of their numbers.</summary>
public sealed class EditionPageTests
{
    [Fact]
    public async Task The_editions_of_the_demo_lie_open()
    {
        await using var house = await TestHouse.OnDemoAsync();

        for (var edition = 1; edition <= 6; edition++)
        {
            await house.OpenAsync(edition);

            ApprovedScreen.Is(house.Screen(), $"edition-{edition}-80");
            ApprovedScreen.Is(house.Screen(120, 35), $"edition-{edition}-120");
        }
    }

    [Theory]
    [InlineData("not-numbered", 80, 19)]
    [InlineData("two-numberings", 80, 19)]
    [InlineData("two-numberings", 120, 35)]
    [InlineData("second-edition", 80, 19)]
    [InlineData("partly-known", 80, 19)]
    [InlineData("someone-elses", 80, 19)]
    [InlineData("thousand", 80, 19)]
    [InlineData("thousand", 120, 35)]
    public async Task An_odd_edition_lies_open_within_the_screen(string which, int width, int height)
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var edition = Made(house.Register, which);
        await house.OpenAsync(edition);

        if (which == "thousand")
        {
            await house.PressAsync("End", "PageUp");
        }

        var screen = house.Screen(width, height);

        ApprovedScreen.Is(screen, $"{which}-{width}");
        Assert.All(screen.Split('\n'), line => Assert.InRange(TextWidth.Of(line), 0, width));
    }

    [Fact]
    public async Task A_finding_is_marked_on_every_cell_it_is_about_and_said_below()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.InscribeImpressions.Run(SmallStudio.Numbers(1, "9"), new WhatStandsOnIt { Pencilled = "3/12" });
        await house.OpenAsync(1);

        await house.PressAsync("Right", "Right");

        ApprovedScreen.Is(house.Screen(), "findings-80");
    }

    [Fact]
    public async Task A_finding_accepted_with_a_reason_is_marked_no_more()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.InscribeImpressions.Run(SmallStudio.Numbers(1, "9"), new WhatStandsOnIt { Pencilled = "3/12" });

        foreach (var handle in house.Register.CheckRegister.Run().Select(finding => finding.Handle).OfType<string>().ToList())
        {
            house.Register.AcceptFinding.Run(handle, "Seen, and left as it is.");
        }

        await house.OpenAsync(1);

        Assert.DoesNotContain("!", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_severity_has_a_sign_of_its_own_and_none_is_a_letter_of_the_map()
    {
        var signs = Enum.GetValues<Domain.Integrity.Severity>().Select(EditionFindings.Sign).ToList();

        Assert.Equal(signs.Count, signs.Distinct().Count());
        Assert.Empty(signs.Intersect("hascxonve?"));
    }

    [Fact]
    public async Task The_heading_and_the_totals_are_those_of_the_map()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var (work, edition) = house.Register.LookAround.Edition(2);
        var map = Domain.Editions.NumberMap.Of(work, edition);

        await house.OpenAsync(2);

        Assert.StartsWith("Edition 2: “Gull Rock”", house.Screen(), StringComparison.Ordinal);
        Assert.All(map.Totals, total => Assert.Matches($"{System.Text.RegularExpressions.Regex.Escape(total.Label)} +{System.Text.RegularExpressions.Regex.Escape(total.Value)}", house.Screen()));
    }

    [Fact]
    public async Task Enter_opens_the_sheet_under_the_cursor_and_a_number_without_one_has_no_such_key()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.OpenAsync(house.Register.Unnumbered());
        var onOpenNumber = house.House.Page.Keys.Select(key => key.Key).ToList();

        await house.PressAsync("End", "Enter");

        Assert.DoesNotContain("Enter", onOpenNumber);
        Assert.IsType<ImpressionPage>(house.House.Page);
    }

    [Fact]
    public async Task A_change_made_in_another_window_is_seen_on_return_and_the_cursor_stays_on_its_number()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var edition = house.Register.Unnumbered();
        await house.OpenAsync(edition);
        await house.PressAsync("Right", "Right");
        house.Register.GiveNumbers.AsPiled(edition, null, SmallStudio.Pile(1, "1-3"));

        await house.PressAsync("7", "1");

        Assert.Contains("  1 h    2 h  › 3 h    4 o", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_edition_that_is_not_there_is_said_and_offers_no_keys()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.OpenAsync(9);

        Assert.StartsWith("There is no edition 9 in this register.", house.Message, StringComparison.Ordinal);
        Assert.Equal("This edition is not in the register.", house.Screen());
        Assert.Empty(house.House.Page.Keys);
    }

    [Fact]
    public async Task Other_editions_of_the_work_open_from_here()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var (first, _) = house.Register.PrintedTwice();
        await house.OpenAsync(first);
        await house.PressAsync("+");

        await house.PressAsync([.. Enumerable.Repeat("Down", 20), "Enter"]);

        Assert.StartsWith("Edition 2:", house.Screen(), StringComparison.Ordinal);
    }

    private static long Made(Register register, string which) => which switch
    {
        "not-numbered" => register.Unnumbered(),
        "two-numberings" => register.PrintedTwice().First,
        "second-edition" => register.PrintedTwice().Second,
        "partly-known" => register.PartlyKnown(),
        "someone-elses" => register.SomeoneElses(),
        _ => register.Thousand(),
    };
}
