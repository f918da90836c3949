using EditionRegister.Tui.AddressBook;
using EditionRegister.Tui.Bench;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>The logbook as it is looked through.</summary>
public sealed class LogbookPageTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task The_demo_s_logbook_is_shown_newest_first_and_is_unbroken(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();

        await house.EnterLogbookAsync();

        ApprovedPage.Is(house.Screen(width, height), "Logbook", $"demo-{width}");
    }

    [Fact]
    public async Task A_new_register_has_one_entry()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.EnterLogbookAsync();

        var head = house.Register.LookAround.Head().Head;
        Assert.Equal(
            $"""
            Unbroken from 1 to 1, head {head[..8]} {head[8..16]} {head[16..24]} {head[24..32]} {head[32..40]} …
            / finds by title, maker, name, place                                      1 of 1
                 entry  when (UTC)        done                      about
            ›        1  2027-03-01 10:00  register made             the register
            """,
            house.Screen());
    }

    [Fact]
    public async Task Who_did_it_has_a_column_once_somebody_is_named()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var first = house.Register.LookAround.Head().N + 1;
        house.As(2).EditWork.Run(1, null, null, "linocut, two blocks");

        await house.EnterLogbookAsync();

        var name = house.Register.LookAround.Book().NameOf(2);
        Assert.Contains("     entry  when (UTC)        who         done", house.Screen(120), StringComparison.Ordinal);
        Assert.Contains($"  {name[..8]}", house.Screen(120).Split('\n')[3], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finds_by_words_of_what_an_entry_is_on()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        await house.PressAsync("/");
        await house.TypeAsync("GULL");
        await house.TurnAsync("Enter");

        var rows = house.Screen(120).Split('\n')[3..];
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Contains("“Gull Rock”", row, StringComparison.Ordinal));
        Assert.Equal(house.Register.LookAround.Logbook(int.MaxValue).Count(entry => entry.Root == "work/2"), rows.Length);
    }

    [Fact]
    public async Task Says_so_where_no_entry_is_found()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        await house.PressAsync("/");
        await house.TypeAsync("zzz");
        await house.TurnAsync("Enter");

        Assert.Contains("No entry is found so. Press a to see all again.", house.Screen(), StringComparison.Ordinal);
        await house.TurnAsync("a");
        Assert.Equal(house.Register.LookAround.Head().N, house.NumbersInSight()[0]);
    }

    [Fact]
    public async Task Looks_for_days_a_person_and_a_subject_at_once()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var first = house.Register.LookAround.Head().N + 1;
        house.As(2).EditWork.Run(2, null, null, "etching and a little aquatint");
        house.As(3).EditWork.Run(2, null, null, "etching");
        house.As(2).EditWork.Run(1, null, null, "linocut");
        var today = house.Register.LookAround.Entry(first)!.At[..10];
        await house.EnterLogbookAsync();

        await house.PressAsync("f");
        await house.FillAsync(("From", today), ("To", today), ("Written by", house.Register.LookAround.Book().NameOf(2)), ("About", "rock"));
        await house.SettleAsync();

        Assert.Equal([first], house.NumbersInSight());
        Assert.Equal($"Entries from {today} to {today}, by {house.Register.LookAround.Book().NameOf(2)}, about “rock”. Press a to see all again.", house.Message);
        Assert.Equal($"Only from {today} to {today}, by {house.Register.LookAround.Book().NameOf(2)}, about “rock”   a shows all", house.Screen().Split('\n')[1]);
    }

    [Fact]
    public async Task A_month_is_looked_through_from_its_first_day_to_its_last()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        await house.PressAsync("f");
        await house.FillAsync(("From", "2026-06"), ("To", "2026-08"));
        await house.SettleAsync();

        Assert.Equal([81, 80, 79, 78], house.NumbersInSight());
    }

    [Theory]
    [InlineData("From", "last spring", "“last spring” names no day to look at: write 2026-03-01, 2026-03 or 2026.")]
    [InlineData("Written by", "Nobody Known", "Nobody called “Nobody Known” is in the address book.")]
    public async Task What_cannot_be_looked_for_is_said_and_the_form_stays(string label, string text, string said)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        await house.PressAsync("f");
        await house.FillAsync((label, text));

        Assert.StartsWith(said, house.Form.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shows_only_what_one_thing_met_with()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        var about = house.Register.LookAround.Logbook(1)[0].Root;

        await house.TurnAsync("o");

        Assert.Equal(house.Register.LookAround.Logbook(int.MaxValue).Where(entry => entry.Root == about).Select(entry => entry.N).Take(15), house.NumbersInSight());
        Assert.Equal("Only about “Tide Table” by Mira Tolland   a shows all", house.Screen().Split('\n')[1]);
    }

    [Theory]
    [InlineData("2026-05", 77, "Entry 77 was the last up to 2026-05-31.")]
    [InlineData("2020", 1, "Nothing was recorded up to 2020-12-31; this is the first entry.")]
    public async Task Goes_to_a_day(string day, long n, string said)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();

        await house.PressAsync("d");
        await house.FillAsync(("Day", day));
        await house.SettleAsync();

        Assert.Equal(said, house.Message);
        Assert.Contains($"›{n,9}  ", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Goes_to_what_an_entry_is_about()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();
        await house.PressAsync("g");
        Assert.IsType<WorkPage>(house.House.Page);
        await house.TurnAsync("Esc");
        house.Register.RecordPerson.Run(new NewPerson { Name = "Ida Quist" });
        await house.EnterLogbookAsync();

        await house.TurnAsync("Home");
        await house.PressAsync("g");

        Assert.IsType<PersonPage>(house.House.Page);
    }

    [Fact]
    public async Task What_another_window_writes_is_there_on_coming_back_and_the_entry_looked_at_stays()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.EnterLogbookAsync();
        await house.TurnAsync("Down", "Down");
        house.Register.RecordPerson.Run(new NewPerson { Name = "Ida Quist" });

        await house.EnterLogbookAsync();

        var lines = house.Screen().Split('\n');
        var last = house.Register.LookAround.Head().N;
        Assert.StartsWith($"Unbroken from 1 to {last}, head ", lines[0], StringComparison.Ordinal);
        Assert.EndsWith($"4 of {last}", lines[1], StringComparison.Ordinal);
        Assert.StartsWith($"›{last - 3,9}", lines[6], StringComparison.Ordinal);
        Assert.Equal(last, house.NumbersInSight()[0]);
    }
}
