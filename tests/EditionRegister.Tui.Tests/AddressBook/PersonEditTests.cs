using EditionRegister.Domain.People;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.AddressBook;

/// <summary>Putting right what is recorded of someone.</summary>
public sealed class PersonEditTests
{
    [Fact]
    public async Task What_was_changed_is_put_right_and_can_be_undone()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "/");
        await house.TypeAsync("averink");
        await house.PressAsync("Enter", "e");

        await house.FillAsync(("Name", "Joost Averinck"), ("Note", ""), ("Contact", "joost@saltmarsh.example"));
        Assert.Equal("Person 2 put right: Joost Averinck, in public “Joost Averinck”.", house.Message);
        var after = house.Register.LookAround.Book().People[2];
        Assert.Equal(("Joost Averinck", "Averinck, Joost", null, "joost@saltmarsh.example"), (after.Name, after.SortName, after.Note, after.Contact));

        await house.PressAsync("u");

        Assert.Equal("Person 2 put right: Joost Averink, in public “Joost Averink”.", house.Message);
        var back = house.Register.LookAround.Book().People[2];
        Assert.Equal(("Joost Averink", "Averink, Joost", "prints with us on Fridays", null), (back.Name, back.SortName, back.Note, back.Contact));
    }

    [Fact]
    public async Task A_change_made_meanwhile_is_refused_with_both_values()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PressAsync("7", "/");
        await house.TypeAsync("averink");
        await house.PressAsync("Enter", "e");
        house.Register.EditPerson.Run("2", new PersonCorrection { Note = "prints with us on Mondays" });

        await house.FillAsync(("Note", "no longer prints with us"));

        Assert.Equal("Someone changed this while you were looking at it: note is now “prints with us on Mondays”, you wanted “no longer prints with us”. Nothing was changed. Look at it as it stands and do this again.", house.Form.Problem);
        Assert.Equal("prints with us on Mondays", house.Register.LookAround.Book().People[2].Note);
    }

    [Fact]
    public async Task Who_was_not_recorded_as_protected_is_protected_from_then_on()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        house.Register.RecordPerson.Run(new NewPerson { Name = "Elsie Marrowby", ClassCode = "8B-04" });
        await house.PressAsync("7", "e");

        await house.FillAsync(("Protected", "yes"), ("In public", "class-code"));

        Assert.Equal("Person 1 put right: Elsie Marrowby, in public “8B-04”.", house.Message);
        Assert.Equal("8B-04", house.Register.LookAround.Book().People[1].CreditText);
    }

    [Fact]
    public async Task A_form_that_was_not_changed_writes_nothing()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var head = house.Register.LookAround.Head();
        await house.PressAsync("7", "e");

        await house.FillAsync();

        Assert.Equal("Nothing was changed.", house.Message);
        Assert.Equal(head, house.Register.LookAround.Head());
    }
}
