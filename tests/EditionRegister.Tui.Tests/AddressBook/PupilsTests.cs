using EditionRegister.Domain.People;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.AddressBook;

/// <summary>A class of pupils, recorded name by name.</summary>
public sealed class PupilsTests
{
    [Fact]
    public async Task Thirty_pupils_need_their_names_and_nothing_else()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("7", "p");
        await house.FillAsync(("Class", "8B"), ("In public", "given"), ("Name", "Pupil 1"));

        for (var pupil = 2; pupil <= 30; pupil++)
        {
            // The cursor stands where the next name is typed, and Enter there records it.
            Assert.Same(house.Form.FieldOf("Name"), house.Form.Current);
            Assert.Equal(house.Form.Fields.Count - 1, house.Form.At);
            await house.FillAsync(("Name", $"Pupil {pupil}"));
        }

        var people = house.Register.LookAround.Book().People.Values.OrderBy(person => person.Id).ToList();
        Assert.Equal(30, people.Count);
        Assert.Equal(Enumerable.Range(1, 30).Select(n => $"8B-{n:00}"), people.Select(person => person.ClassCode));
        Assert.All(people, person => Assert.True(person is { IsProtected: true, Policy: "given" }));
        Assert.Equal("Pupil 30 recorded as person 30; in public “Pupil”.", house.Message);
        Assert.Equal(["30 pupils of 8B in the address book; the last was Pupil 30, 8B-30. Type the next name, or Esc to end."], house.Form.About);
    }

    [Fact]
    public async Task Codes_go_on_above_the_highest_and_one_that_is_typed_stays()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var before = house.Register.LookAround.Book().People.Count;
        await house.PressAsync("7", "p");

        await house.FillAsync(("Class", "8B"), ("Name", "Ivo Lund"));
        await house.FillAsync(("Name", "Una Fell"), ("Class code", "8B-40"));
        await house.FillAsync(("Name", "Sol Brack"));

        Assert.Equal(["8B-18", "8B-40", "8B-41"], house.Register.LookAround.Book().People.Values.Where(person => person.Id > before).OrderBy(person => person.Id).Select(person => person.ClassCode));
    }

    [Fact]
    public async Task The_caution_stands_under_the_form_and_the_most_private_way_comes_first()
    {
        await using var house = await TestHouse.OnEmptyAsync();

        await house.PressAsync("7", "p");

        Assert.Equal("Keep no more about a pupil than the work needs; what may be shown, and who has agreed to it, is for your school's policy and local law to say.", house.Form.Caution);
        Assert.Equal("class-code", house.Form.FieldOf("In public").Text);
    }

    [Fact]
    public async Task A_pupil_known_already_is_refused_and_the_form_stays()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var before = house.Register.LookAround.Book().People.Count;
        await house.PressAsync("7", "p");

        await house.FillAsync(("Class", "8B"), ("Name", "Tam Birdseye"));

        Assert.Equal("Tam Birdseye is in the address book already, as 8. Nothing was changed. If this is somebody else of the same name, say so; on the command line with --another.", house.Form.Problem);
        Assert.Equal(before, house.Register.LookAround.Book().People.Count);
    }

    [Fact]
    public async Task Another_window_that_records_a_pupil_of_the_class_takes_no_code_away()
    {
        await using var house = await TestHouse.OnEmptyAsync();
        await house.PressAsync("7", "p");
        await house.FillAsync(("Class", "8B"), ("Name", "Ivo Lund"));
        house.Register.RecordPerson.Run(new NewPerson { Name = "Una Fell", IsProtected = true, ClassCode = "8B-02" });

        await house.FillAsync(("Name", "Sol Brack"));

        Assert.Equal("8B-03", house.Register.LookAround.Book().People[3].ClassCode);
        Assert.Equal("8B-03", house.Register.LookAround.Book().People[3].PublicText);
    }
}
