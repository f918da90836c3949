using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.AddressBook;

/// <summary>The list of everyone at work.</summary>
public sealed class PeoplePageTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task Everyone_of_the_demo_is_listed(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.PressAsync("7");

        ApprovedScreen.Is(house.Screen(width, height), $"people-{width}", "AddressBook");
    }

    [Fact]
    public async Task An_empty_book_says_what_to_do_first()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("7");

        ApprovedScreen.Is(house.Screen(), "people-empty", "AddressBook");
    }

    [Theory]
    [InlineData("ines", "Inés Vargøy")]
    [InlineData("8b-11", "Tam Birdseye")]
    public async Task A_name_or_a_class_code_finds_without_accents_and_capitals(string typed, string found)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "/");

        await house.TypeAsync(typed);

        Assert.Equal($"›  {found}", house.Screen().Split('\n')[2].TrimEnd()[..(found.Length + 3)]);
        Assert.Equal(3, house.Screen().Split('\n').Length);
    }

    [Fact]
    public async Task Someone_recorded_is_in_the_list_and_it_is_said_as_the_command_says_it()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("7", "n");

        await house.FillAsync(("Name", "Mira Tolland"));

        Assert.Equal("Mira Tolland recorded as person 1; in public “Mira Tolland”.", house.Message);
        Assert.Contains("›  Mira Tolland", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Someone_protected_is_shown_by_initials_unless_said_otherwise()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("7", "n");

        await house.FillAsync(("Name", "Elsie Marrowby"), ("Protected", "yes"));

        Assert.Equal("Elsie Marrowby recorded as person 1; in public “E. M.”.", house.Message);
    }

    [Fact]
    public async Task A_way_to_show_a_name_that_is_none_is_told_with_the_ways_there_are()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("7", "n");

        await house.FillAsync(("Name", "Mira Tolland"), ("In public", "nickname"));

        Assert.Equal("“nickname” is no way to show a name in public. The ways are full, given, given-and-initial, initials, class-code, unnamed, wording.", house.Form.Problem);
        Assert.Empty(house.Register.LookAround.Book().People);
    }

    [Fact]
    public async Task A_namesake_is_refused_until_it_is_said_that_it_is_one()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "n");

        await house.FillAsync(("Name", "mira tolland"));
        Assert.Equal("Mira Tolland is in the address book already, as 1. Nothing was changed. If this is somebody else of the same name, say so; on the command line with --another.", house.Form.Problem);
        await house.FillAsync(("A namesake", "yes"));

        Assert.Equal("mira tolland recorded as person 13; in public “mira tolland”.", house.Message);
    }

    [Fact]
    public async Task Someone_recorded_in_another_window_is_there_on_return_and_the_cursor_stays()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "Down", "Down");
        var before = house.Screen().Split('\n').Single(line => line.StartsWith('›'));

        house.Register.RecordPerson.Run(new NewPerson { Name = "Aad Aalders" });
        await house.PressAsync("1", "7");

        Assert.Equal(before, house.Screen().Split('\n').Single(line => line.StartsWith('›')));
        Assert.Contains("   Aad Aalders", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_that_would_break_a_screen_keep_their_columns()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new NewPerson { Name = "王芳王芳王芳王芳王芳王芳王芳王芳王芳", ClassCode = "長い長い長い長い" });
        house.Register.RecordPerson.Run(new NewPerson { Name = "Bad \u001b[31mred" });

        await house.PressAsync("7");

        Assert.All(house.Screen().Split('\n'), line => Assert.True(Domain.Text.TextWidth.Of(Domain.Text.SafeText.Show(line)) <= 80, line));
    }
}
