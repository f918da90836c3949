using EditionRegister.Tui.Bench;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.AddressBook;

/// <summary>Someone whole.</summary>
public sealed class PersonPageTests
{
    [Theory]
    [InlineData("Quay Gallery", "gallery", 80, 19)]
    [InlineData("Quay Gallery", "gallery", 120, 35)]
    [InlineData("Mira", "maker", 80, 19)]
    [InlineData("Vargøy", "buyer", 80, 19)]
    [InlineData("8B-17", "pupil", 80, 19)]
    public async Task Who_they_are_and_what_they_have_is_shown(string find, string name, int width, int height)
    {
        await using var house = await OnAsync(find);

        ApprovedScreen.Is(house.Screen(width, height), $"person-{name}-{width}", "AddressBook");
    }

    [Fact]
    public async Task Enter_opens_the_sheet_or_the_work()
    {
        await using var house = await OnAsync("8B-17");

        await house.PressAsync("Enter");
        Assert.IsType<ImpressionPage>(house.House.Page);
        await house.PressAsync("Esc", "End", "Enter");

        Assert.IsType<WorkPage>(house.House.Page);
    }

    [Fact]
    public async Task Space_marks_a_sheet_and_goes_on_to_the_next()
    {
        await using var house = await OnAsync("Quay Gallery");

        await house.PressAsync("Space", "Space");

        Assert.Equal(2, house.House.Desk.Marked.Count);
        Assert.Contains("2 marked here", house.Screen(), StringComparison.Ordinal);
        Assert.Equal(2, house.Screen().Split('\n').Count(line => line.Contains('•', StringComparison.Ordinal)));
    }

    [Fact]
    public async Task What_came_back_meanwhile_is_no_longer_listed()
    {
        await using var house = await OnAsync("Quay Gallery");
        var before = house.Screen().Split('\n').Count(line => line.Contains("has  ", StringComparison.Ordinal));
        var codes = house.Register.LookAround.PersonWhole(4).Has.First.Select(sheet => sheet.Code).ToList();

        house.Register.ReturnImpressions.Run(new ImpressionChoice { Sheets = codes[0] }, null, null, Domain.Dates.RecordedDate.None, null);
        await house.PressAsync("1", "7");

        Assert.Equal(codes.Count, before);
        Assert.Equal(before - 1, house.Screen().Split('\n').Count(line => line.Contains("has  ", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task What_a_gallery_has_is_taken_back_together()
    {
        await using var house = await OnAsync("Quay Gallery");
        var before = house.Register.LookAround.PersonWhole(4).Has.All;
        await house.PressAsync("Space", "Space", "r");
        Assert.Equal("Take back 2 sheets with or of Quay Gallery", house.Form.Title);

        await house.House.SaveAsync(house.Form);

        Assert.Equal(before - 2, house.Register.LookAround.PersonWhole(4).Has.All);
    }

    [Theory]
    [InlineData("Quay Gallery", "Enter Space r d e s m c a p i w x t o")]
    [InlineData("8B-17", "Enter Space r d e s m c a p i w x t o")]
    [InlineData("Westhaven", "e")]
    public async Task The_keys_that_mean_something_are_offered_once_each(string find, string keys)
    {
        await using var house = await OnAsync(find);

        Assert.Equal(keys, string.Join(' ', house.House.Page.Keys.Select(key => key.Key)));
    }

    private static async Task<TestHouse> OnAsync(string find)
    {
        var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "/");
        await house.TypeAsync(find);
        await house.PressAsync("Enter", "Enter");

        return house;
    }
}
