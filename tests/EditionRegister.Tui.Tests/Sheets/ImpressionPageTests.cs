using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Tests.PlanChest;
using EditionRegister.UseCases.People;
using static EditionRegister.Tui.Tests.Sheets.OnSheets;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>One impression whole.</summary>
public sealed class ImpressionPageTests
{
    [Theory]
    [InlineData(80)]
    [InlineData(120)]
    public async Task All_that_is_known_of_a_sheet_is_on_its_page(int width)
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.InscribeImpressions.Run(Harbour("6"), new WhatStandsOnIt { Pencilled = "5/12", Inscription = "for the studio", Side = "back", Position = "lower left", Condition = "a crease at the upper edge" });
        await house.OpenSheetAsync(Harbour("6"));

        var screen = house.Screen(width, 80);

        // The history is the logbook's matter and tried below.
        ApprovedScreen.Is(screen[..screen.IndexOf("\n\nHistory of the work:", StringComparison.Ordinal)], $"impression-{width}", "Sheets");
        Assert.All(screen.Split('\n'), line => Assert.InRange(TextWidth.Of(line), 0, width));
    }

    [Fact]
    public async Task A_sheet_of_which_little_is_known_and_whose_title_is_wide_fits_too()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new NewPerson { Name = "Åsa \u001b[31mØrnevik\u202e" });
        var work = house.Register.RecordWork.Run(new NewWork { Title = SmallStudio.WideTitle, Year = RecordedDate.Read("unknown") }, ["1"]);
        var place = string.Join(" › ", Enumerable.Range(1, 6).Select(number => $"A room with a long name {number}"));
        house.Register.RecordPlace.Run(place);
        house.Register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 1, Paper = string.Concat(Enumerable.Repeat("海", 70)) }, place);
        await house.OpenSheetAsync(SmallStudio.Pile(work, "1"));

        // As the screen shows it: what would command or reorder is visible.
        var lines = house.Screen(80, 60).Split('\n').Select(SafeText.Show).ToList();

        ApprovedScreen.Is(string.Join('\n', lines), "impression-odd-80", "Sheets");
        Assert.All(lines, line => Assert.InRange(TextWidth.Of(line), 0, 80));
    }

    [Fact]
    public async Task What_is_found_stands_at_the_top_and_with_its_remedy_below()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.InscribeImpressions.Run(Harbour("9"), new WhatStandsOnIt { Pencilled = "10/12" });
        await house.OpenSheetAsync(Harbour("9"));

        var lines = house.Screen(80, 80).Split('\n');

        Assert.Equal(("“Harbour at Low Water” 10/12   7J7W-XNXY", "! 2 contradictions: see Findings below"), (lines[0], lines[1]));
        var found = house.Register.CheckRegister.Run().First(finding => finding.Rule == "NumbersAreUnique");
        var told = string.Join(' ', lines.Select(line => line.Trim()));
        Assert.Contains($"contradiction: {found.Message} What to do: {found.Remedy}", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_accepted_stands_apart_with_its_reason()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.InscribeImpressions.Run(Harbour("9"), new WhatStandsOnIt { Pencilled = "10/12" });

        foreach (var finding in house.Register.CheckRegister.Run().Where(finding => finding.Severity != Domain.Integrity.Severity.Note && finding.Accepted is null).ToList())
        {
            house.Register.AcceptFinding.Run(finding.Handle!, "seen, pencil kept as it is");
        }

        await house.OpenSheetAsync(Harbour("9"));

        var lines = house.Screen(80, 80).Split('\n');

        Assert.DoesNotContain("see Findings", lines[0], StringComparison.Ordinal);
        Assert.Contains("Accepted 2027-03-01: seen, pencil kept as it is", lines.Select(line => line.Trim()));
    }

    [Fact]
    public async Task The_arrows_turn_to_the_numbers_beside_it()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("1"));
        var first = house.House.Page.Keys.Select(key => key.Key).ToList();

        await house.PressAsync("Right");
        var second = house.House.Page.Title;
        await house.PressAsync("Left");

        Assert.DoesNotContain("Left", first);
        Assert.Equal("“Harbour at Low Water” 2/12", second);
        Assert.Equal("“Harbour at Low Water” 1/12", house.House.Page.Title);
    }

    [Fact]
    public async Task After_the_last_number_come_the_proofs()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("12"));

        await house.PressAsync("Right");

        Assert.Equal("“Harbour at Low Water” A/P I/II", house.House.Page.Title);
    }

    [Fact]
    public async Task Sheets_without_a_number_are_turned_as_they_lie_in_the_pile()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.Unnumbered();
        await house.OpenSheetAsync(SmallStudio.Pile(1, "5"));

        await house.PressAsync("Right");

        Assert.Equal("“Mole End” spare", house.House.Page.Title);
    }

    [Fact]
    public async Task Its_history_and_its_work_are_a_key_away()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("9"));

        await house.PressAsync("h");
        var history = house.Screen(80, 40);
        await house.PressAsync("Enter");
        var entry = house.House.Page.Title;
        await house.PressAsync("Esc", "Esc", "b");

        Assert.Contains("›      219  2026-11-23 09:01  stock-take settled", history, StringComparison.Ordinal);
        Assert.Contains("work recorded", history, StringComparison.Ordinal);
        Assert.Equal("entry 219", entry);
        Assert.IsType<WorkPage>(house.House.Page);
        Assert.Equal(RoomName.Bench, house.House.Here.Name);
    }

    [Fact]
    public async Task What_is_done_to_it_is_done_to_it_alone_and_the_page_shows_it()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("9"));

        await house.PressAsync("m");
        await house.FillAsync(("Place", "Drawer 2"));

        Assert.Contains("Where         in Studio › Plan chest › Drawer 2", house.Screen(80, 40), StringComparison.Ordinal);
        Assert.Equal("in Studio › Plan chest › Drawer 1", house.WhereIs(Harbour("10")));
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task What_another_window_did_shows_when_the_page_is_returned_to()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.OpenSheetAsync(Harbour("9"));
        house.Register.Consign.Run(Harbour("9"), "Quay Gallery");

        await house.PressAsync("h", "Esc");

        Assert.Contains("Where         with Quay Gallery", house.Screen(80, 40), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_code_that_is_not_in_the_register_is_said()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.House.Here.Open(new TextPageOf("codes", "", _ => []) { More = [KeyDeed.Opens("*", "open", () => new ImpressionPage(house.House.Desk, "MEKA-X5ED"))] });

        await house.PressAsync("*");

        Assert.Equal("No impression in this register has the code MEKA-X5ED. Nothing was changed. Look at the code again; `edreg list` shows all codes.", house.Message);
        Assert.Equal("MEKA-X5ED is not in this register.", house.Screen());
        Assert.Empty(house.House.Page.Keys);
    }
}
