using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>What is done to an edition and to its numbers, from the tray.</summary>
public sealed class EditionDeedsTests
{
    [Fact]
    public async Task The_fate_of_the_number_under_the_cursor_is_said_and_undone()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("Right", "f");
        var proposed = house.Form["Numbers"];

        await house.FillAsync(("What became of them", "void"), ("The story", "torn while signing"));

        Assert.Equal("2", proposed);
        Assert.Equal("Edition 1 of “Mole End”: 1 number void.", house.Message);
        Assert.Contains("2/6  void · torn while signing", house.Screen(), StringComparison.Ordinal);

        await house.PressAsync("u");

        Assert.Equal("1 number as before.", house.Message);
        Assert.All(house.Register.LookAround.Edition(1).Edition.Numberings[0].Numbers, slot => Assert.Equal(("open", null), (slot.Fate, slot.Note)));
    }

    [Fact]
    public async Task A_letter_is_proposed_as_it_is_typed()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("Down", "Right", "f");

        await house.FillAsync(("What became of them", "never printed"));

        Assert.Equal("Edition 1 of “Mole End”: 1 number never printed.", house.Message);
        Assert.Equal(["open", "never-printed"], house.Register.LookAround.Edition(1).Edition.Numberings[1].Numbers.Select(slot => slot.Fate));
    }

    [Fact]
    public async Task A_void_number_needs_its_story_and_the_form_stays_open()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("f");

        await house.FillAsync(("What became of them", "void"));

        Assert.Equal("A void number needs its story. Nothing was changed. Say what happened with --note.", house.Form.Problem);
    }

    [Fact]
    public async Task A_number_that_a_sheet_has_needs_no_fate()
    {
        await using var house = await OnUnnumberedAsync();
        var given = house.Register.GiveNumbers.AsPiled(1, null, SmallStudio.Pile(1, "1"));
        await house.PressAsync("7", "1", "+", "f");

        await house.FillAsync(("Numbers", "1"), ("What became of them", "elsewhere"));

        Assert.Equal($"1/6 is on {given[0].Sheet.ShownCode}, and a number that is given needs no other fate. Nothing was changed. Take it back first if the sheet does not bear it.", house.Form.Problem);
    }

    [Fact]
    public async Task The_next_sheets_of_the_pile_get_the_first_open_numbers()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("g");

        await house.FillAsync(("Numbers", ""), ("Numbering", "1/6 to 6/6"));

        Assert.Equal("5 numbers of edition 1 of “Mole End” given.", house.Message);
        Assert.Contains("  1 h    2 h    3 h    4 h    5 h    6 o", house.Screen().Replace('›', ' '), StringComparison.Ordinal);

        await house.PressAsync("u");

        Assert.Equal("The number of 5 sheets taken back.", house.Message);
    }

    [Fact]
    public async Task The_number_under_the_cursor_goes_to_the_next_sheet_of_the_pile()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("Right", "Right", "Right", "g");
        var next = house.Register.LookAround.Work(1).Impressions[0].ShownCode;

        await house.House.SaveAsync(house.Form);

        Assert.Equal($"1 number of edition 1 of “Mole End” given. {next} is 4/6.", house.Message);
    }

    [Fact]
    public async Task Proofs_by_letters_are_numbered_too()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("g");

        await house.FillAsync(("Sheets", house.Register.LookAround.Work(1).Impressions[7].ShownCode), ("Numbers", ""), ("Numbering", "A/P A/B to A/P B/B"));

        Assert.EndsWith(" is A/P A/B.", house.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_number_is_not_given_twice_and_the_refusal_stands_in_the_form()
    {
        await using var house = await OnUnnumberedAsync();
        var first = house.Register.GiveNumbers.AsPiled(1, null, SmallStudio.Pile(1, "1"))[0].Sheet.ShownCode;
        await house.PressAsync("g");

        await house.FillAsync(("Numbers", "1"));

        Assert.Equal($"1/6 of “Mole End” is on {first} already. Nothing was changed. Choose an open number, or take that one back first.", house.Form.Problem);
    }

    [Fact]
    public async Task A_spare_is_kept_first_and_then_takes_the_open_number()
    {
        await using var house = await OnUnnumberedAsync();
        var spare = house.Register.LookAround.Work(1).Impressions[5].ShownCode;
        house.House.Desk.Marked.Mark(spare);
        await house.PressAsync("Right", "g");
        var asked = house.Question.Asked;
        await house.PressAsync("y");
        var kept = house.Message;

        await house.House.SaveAsync(house.Form);

        Assert.Equal($"A spare is to get a number: “Mole End” {spare}. Keep it first?", asked);
        Assert.Equal("1 sheet kept.", kept);
        Assert.Equal($"1 number of edition 1 of “Mole End” given. {spare} is 2/6.", house.Message);
    }

    [Fact]
    public async Task A_spare_is_left_a_spare_where_the_answer_is_no()
    {
        await using var house = await OnUnnumberedAsync();
        house.House.Desk.Marked.Mark(house.Register.LookAround.Work(1).Impressions[5].ShownCode);

        await house.PressAsync("g", "n");

        Assert.Equal("spare", house.Register.LookAround.Work(1).Impressions[5].Standing);
    }

    [Fact]
    public async Task Where_no_number_is_open_none_is_offered_to_be_given()
    {
        await using var house = await OnUnnumberedAsync();
        var before = house.House.Page.Keys.Select(key => key.Key).ToList();
        house.Register.StateNumberFate.Run(1, "1-6, A/P A-B", "elsewhere", null);

        await house.PressAsync("7", "1");

        Assert.Contains("g", before);
        Assert.DoesNotContain("g", house.House.Page.Keys.Select(key => key.Key));
    }

    [Fact]
    public async Task What_is_asked_of_an_edition_fits_a_small_screen()
    {
        await using var house = await OnUnnumberedAsync();

        await house.PressAsync("+", "c");

        // A frame of four columns and a margin of four stand around it at 80.
        Assert.All(house.Question.Shown, line => Assert.InRange(line.Width, 0, 72));
    }

    [Fact]
    public async Task Numbers_are_taken_back_from_marked_sheets()
    {
        await using var house = await OnUnnumberedAsync();
        house.Register.GiveNumbers.AsPiled(1, null, SmallStudio.Pile(1, "1-3"));
        await house.PressAsync("7", "1", "Space", "Right", "Space", "+", "t");
        var asked = house.Question.Asked;

        await house.PressAsync("y");

        Assert.Equal("Take back the number of “Mole End” 1/6, 2/6?", asked);
        Assert.Equal("The number of 2 sheets taken back.", house.Message);
    }

    [Fact]
    public async Task A_signed_sheet_keeps_its_number()
    {
        await using var house = await OnUnnumberedAsync();
        var sheet = house.Register.GiveNumbers.AsPiled(1, null, SmallStudio.Pile(1, "1"))[0].Sheet.ShownCode;
        house.Register.InscribeImpressions.Run(SmallStudio.Numbers(1, "1"), new WhatStandsOnIt { Signed = "yes" });

        await house.PressAsync("7", "1", "+", "t", "y");

        Assert.StartsWith($"1/6 of “Mole End” ({sheet}) is signed, certified or has left the studio, so its number stays.", house.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_size_declared_by_mistake_is_mended_and_undone()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("+", "m");

        await house.FillAsync(("As it should be", "1-5"));

        Assert.Equal("Edition 1 of “Mole End” mended: 1/5 to 5/5; A/P A/B to A/P B/B.", house.Message);

        await house.PressAsync("u");

        Assert.Equal("Edition 1 of “Mole End” mended: 1/6 to 6/6; A/P A/B to A/P B/B.", house.Message);
    }

    [Theory]
    [InlineData("twelve", "“twelve” is no numbering. Nothing was changed. Write its first and last number, with the mark before them: 1-12, A/P I-II, H.C. A-C, B.A.T., or open.")]
    [InlineData("H.C. 1-2", "The edition of “Mole End” has no numbering for H.C. 1-2. Nothing was changed. `edreg map` shows its numberings.")]
    public async Task A_size_that_cannot_be_is_refused(string typed, string refusal)
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("+", "m");

        await house.FillAsync(("As it should be", typed));

        Assert.Equal(refusal, house.Form.Problem);
    }

    [Fact]
    public async Task Closing_says_what_it_means_and_what_is_missing()
    {
        await using var house = await OnUnnumberedAsync();
        await house.PressAsync("+", "c");
        var shown = house.Question.Shown.Select(line => line.ToString()).ToList();

        await house.PressAsync("y");

        Assert.Contains("Accounted for now: 0 of 6 (6 open).", shown);
        Assert.StartsWith("The edition of “Mole End” cannot be closed yet: no sheet has 1/6, 2/6, 3/6, 4/6, 5/6, 6/6; no sheet has A/P A/B, A/P B/B;", house.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_edition_accounted_for_is_closed_on_a_day_named_and_offers_no_more_deeds_of_numbers()
    {
        await using var house = await OnUnnumberedAsync();
        house.Register.GiveNumbers.AsPiled(1, null, null);
        house.Register.StateNumberFate.Run(1, "6, A/P A-B", "never-printed", null);
        house.Register.StateMatrixFate.Run(1, null, "cancelled", RecordedDate.Read("2027"), null, false);
        await house.PressAsync("7", "1", "+", "c", "d");

        await house.FillAsync(("Closed on", "2027-02-28"));

        Assert.Equal("Edition 1 of “Mole End” closed on 2027-02-28: every number is accounted for.", house.Message);
        await house.PressAsync("+");
        Assert.Equal(["b", "y", "p", "d", "v", "k"], Assert.IsType<Choice>(house.House.Asking).Among.Select(one => one.Key));
    }

    [Fact]
    public async Task An_edition_known_in_part_becomes_whole_once_all_is_known()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        var edition = house.Register.PartlyKnown();
        await house.OpenAsync(edition);
        await house.PressAsync("+", "w", "y");
        var refused = house.Message;
        house.Register.StateNumberFate.Run(edition, "1-3, 5-16, 18-20", "elsewhere", "sold before 2027");

        await house.PressAsync("+", "w", "y");

        Assert.StartsWith("The edition of “Old Friends” is not whole here yet: nobody has said what became of 1/20, 2/20,", refused, StringComparison.Ordinal);
        Assert.Equal("Edition 1 of “Old Friends” is whole: every number of it is accounted for or open.", house.Message);
        Assert.Contains("limited, ours, wholly here", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_work_opens_at_the_bench()
    {
        await using var house = await OnUnnumberedAsync();

        await house.PressAsync("+", "b");

        Assert.Equal(RoomName.Bench, house.House.Here.Name);
        Assert.IsType<WorkPage>(house.House.Page);
    }

    private static async Task<TestHouse> OnUnnumberedAsync()
    {
        var house = await TestHouse.OnEmptyAsync();
        await house.OpenAsync(house.Register.Unnumbered());
        // Up and down go by the rows last drawn.
        house.Screen();

        return house;
    }
}
