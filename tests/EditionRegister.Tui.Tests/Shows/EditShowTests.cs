using EditionRegister.Domain.Shows;

namespace EditionRegister.Tui.Tests.Shows;

/// <summary>Putting right what is recorded of a show.</summary>
public sealed class EditShowTests
{
    [Fact]
    public async Task What_is_put_right_is_said_and_undone()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("e");

        await house.FillAsync(("Closes", "2026-06-21"), ("Note", ""), ("Place", "Print room"), ("Kind", "other"));
        var (said, now) = (house.Message, house.Register.LookAround.Show(show).Show);
        await house.PressAsync("u");

        Assert.Equal("Show 1 put right: “Open studio 2026”, 2026-06-12 to 2026-06-21.", said);
        Assert.Equal(("2026-06-21", "other", "Westhaven School › Print room"), (now.Closes.Text, now.Kind, house.Register.LookAround.Book().PathOf(now.Place)));
        Assert.True(string.IsNullOrEmpty(now.Note));
        Assert.Equal("Show 1 put right: “Open studio 2026”, sale, 2026-06-12 to 2026-06-14.", house.Message);
        var before = house.Register.LookAround.Show(show).Show;
        Assert.Equal(("2026-06-14", "sale", 1L, "Bring the small press."), (before.Closes.Text, before.Kind, before.Place, before.Note));
    }

    [Fact]
    public async Task A_date_that_is_emptied_is_not_known_any_more()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("e");

        await house.FillAsync(("Closes", ""));

        Assert.Equal("Show 1 put right: “Open studio 2026”, sale, from 2026-06-12.", house.Message);
        Assert.False(house.Register.LookAround.Show(show).Show.Closes.IsKnown);
    }

    [Fact]
    public async Task What_another_window_changed_meanwhile_is_refused_with_both_values_and_the_form_stays()
    {
        var (house, show) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("e");
        house.Register.EditShow.Run(show, new ShowCorrection { Name = "Open days" });

        await house.FillAsync(("Name", "Open doors"));

        Assert.Contains("“Open days”", house.Form.Problem, StringComparison.Ordinal);
        Assert.Contains("“Open doors”", house.Form.Problem, StringComparison.Ordinal);
        Assert.Equal("Open days", house.Register.LookAround.Show(show).Show.Name);
    }

    [Fact]
    public async Task A_place_once_named_can_be_changed_and_not_taken_away()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        await house.PressAsync("e");

        await house.FillAsync(("Place", ""));

        Assert.Equal("Place is needed: where it is held: Studio, or the end of a place's path.", house.Form.Problem);
    }

    [Fact]
    public async Task A_place_named_for_the_first_time_is_not_offered_to_be_undone()
    {
        await using var house = await TestHouse.OnDemoAsync();
        house.Register.MakeShow.Run(new NewShow { Name = "Class 8B" });
        await house.PressAsync("6", "Enter", "e");

        await house.FillAsync(("Place", "Print room"));

        Assert.Null(house.House.Desk.Undo);
        Assert.Equal("Show 1 put right: “Class 8B”, exhibition.", house.Message);
    }

    [Fact]
    public async Task Where_nothing_was_changed_nothing_is_written()
    {
        var (house, _) = await ShowsHouse.WithShowAsync();
        await using var open = house;
        var before = house.Register.LookAround.Head();
        await house.PressAsync("e");

        await house.FillAsync();

        Assert.Equal("Nothing was changed: all stands as it did.", house.Message);
        Assert.Equal(before, house.Register.LookAround.Head());
    }
}
