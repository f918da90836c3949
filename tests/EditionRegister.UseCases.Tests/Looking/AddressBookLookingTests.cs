using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>The address book finds what somebody finds who leafs through all works, sheet by sheet.</summary>
public sealed class AddressBookLookingTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _demo;
    private readonly IReadOnlyList<Work> _works;

    public AddressBookLookingTests()
    {
        _demo = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));
        SomeDeeds.DoAll(_demo);
        _works = _demo.LookAround.Works();
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Everybody_is_listed_with_what_they_have_own_and_made()
    {
        var people = _demo.LookAround.People(null);

        Assert.Equal(_demo.LookAround.Book().People.Keys.Order(), people.Select(listed => listed.Person.Id).Order());
        Assert.All(people, listed =>
        {
            Assert.Equal(Sheets(sheet => sheet.Where?.Holder == listed.Person.Id).Count, listed.Has);
            Assert.Equal(Sheets(sheet => sheet.Whose?.Person == listed.Person.Id).Count, listed.Owns);
            Assert.Equal(_works.Count(work => work.Roles.Any(role => role.Person == listed.Person.Id)), listed.Works);
        });
        Assert.True(people.Sum(listed => listed.Has) > 0 && people.Sum(listed => listed.Owns) > 0);
    }

    [Theory]
    [InlineData("ÉBENE ada")]
    [InlineData("7b-12")]
    [InlineData("tolland, mi")]
    [InlineData("nobody of that name")]
    public void Words_find_people_by_name_sort_name_and_class_code(string text)
    {
        var found = _demo.LookAround.People(text);

        var folded = text.Split(' ').Select(Domain.Text.SearchText.Fold).ToList();
        Assert.Equal(
            _demo.LookAround.People("").Where(listed => folded.All(word => new[] { listed.Person.FullName, listed.Person.SortName, listed.Person.ClassCode }
                .Any(part => Domain.Text.SearchText.Fold(part ?? "").Contains(word, StringComparison.Ordinal)))),
            found);
    }

    [Fact]
    public void Someone_whole_has_every_sheet_with_its_number_and_since_when()
    {
        foreach (var person in _demo.LookAround.Book().People.Keys)
        {
            var seen = _demo.LookAround.PersonWhole(person);

            var has = Sheets(sheet => sheet.Where?.Holder == person);
            var owns = Sheets(sheet => sheet.Whose?.Person == person);
            Assert.Equal(
                has.Select(one => (one.Work.Id, one.Work.ShownTitle, one.Sheet.ShownCode, one.Work.NumberOf(one.Sheet), one.Sheet.Whereabouts[^1].Moved, one.Sheet.Whereabouts[^1].Until, one.Sheet.Whereabouts[^1].Rate)).ToHashSet(),
                seen.Has.First.Select(kept => (kept.Work, kept.Title, kept.Code, kept.Number, kept.Since, kept.Until, kept.Rate)).ToHashSet());
            Assert.Equal(
                owns.Select(one => (one.Sheet.ShownCode, one.Work.NumberOf(one.Sheet), one.Sheet.Ownership[^1].Kind, one.Sheet.Ownership[^1].Passed)).ToHashSet(),
                seen.Owns.First.Select(kept => (kept.Code, kept.Number, kept.Kind, kept.Since)).ToHashSet());
            Assert.Equal((has.Count, owns.Count), (seen.Has.First.Count, seen.Owns.First.Count));
            Assert.Equal((has.Count, owns.Count), (seen.Has.All, seen.Owns.All));
            Assert.Equal(
                _works.SelectMany(work => work.Roles.Where(role => role.Person == person).Select(role => (work.Id, role.Role))).Order(),
                seen.Roles.Select(role => (role.Work, role.Role)).Order());
        }
    }

    [Fact]
    public void Of_many_sheets_the_first_are_listed_and_all_are_counted()
    {
        var owner = _demo.LookAround.People("tolland").MaxBy(listed => listed.Owns)!;

        var seen = _demo.LookAround.PersonWhole(owner.Person.Id, take: 3);

        Assert.Equal((3, owner.Owns), (seen.Owns.First.Count, seen.Owns.All));
        Assert.Equal(_demo.LookAround.PersonWhole(owner.Person.Id).Owns.First.Take(3), seen.Owns.First);
    }

    [Fact]
    public void A_place_whole_has_what_lies_in_it_and_in_the_places_inside_it()
    {
        var book = _demo.LookAround.Book();

        foreach (var place in book.Places.Keys)
        {
            var seen = _demo.LookAround.PlaceWhole(place);

            var path = book.PathOf(place);
            var lying = Sheets(sheet => sheet.Where?.Place is { } at && (at == place || book.PathOf(at).StartsWith(path + " › ", StringComparison.Ordinal)));
            Assert.Equal(
                lying.Select(one => (one.Sheet.ShownCode, one.Sheet.Where!.Place, one.Sheet.Whereabouts[^1].Moved)).ToHashSet(),
                seen.Sheets.First.Select(kept => (kept.Code, kept.Place, kept.Since)).ToHashSet());
            Assert.Equal((path, lying.Count, lying.Count), (seen.Listed.Path, (int)seen.Listed.Within, (int)seen.Sheets.All));
            Assert.Equal(lying.Count(one => one.Sheet.Where!.Place == place), seen.Listed.Sheets);
            Assert.Equal(
                book.Places.Keys.Select(id => book.PathOf(id)).Where(other => other.StartsWith(path + " › ", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
                seen.Inside.Select(inner => inner.Path).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Words_find_places_on_their_path()
    {
        var found = _demo.LookAround.Places("grösse FACH");

        Assert.Equal(["Größe › Fach 9"], found.Select(place => place.Path));
        Assert.Equal((2, 2), (found[0].Sheets, found[0].Within));
        Assert.Equal(_demo.LookAround.Book().Places.Count, _demo.LookAround.Places(" ").Count);
    }

    [Fact]
    public void Who_or_what_is_not_there_is_refused()
    {
        Assert.Equal("person-not-found", Assert.Throws<RefusedException>(() => _demo.LookAround.PersonWhole(99_999)).Name);
        Assert.Equal("place-not-found", Assert.Throws<RefusedException>(() => _demo.LookAround.PlaceWhole(99_999)).Name);
    }

    [Fact]
    public void What_was_written_most_often_is_suggested_first()
    {
        var suggested = _demo.LookAround.Suggestions();

        Assert.Equal(ByFrequency(_works.Select(work => work.Technique)), suggested.Techniques);
        Assert.Equal(ByFrequency(_works.SelectMany(work => work.Runs).Select(run => run.Paper)), suggested.Papers);
        Assert.Equal(ByFrequency(_works.SelectMany(work => work.Runs).Select(run => run.State)), suggested.States);
        Assert.Equal(ByFrequency(_works.SelectMany(work => work.Matrices).Select(matrix => matrix.Material)), suggested.Materials);
        Assert.Equal("Mira Tolland", suggested.People[0]);
        Assert.Contains("Größe › Fach 9", suggested.Places);
        var used = _works.SelectMany(work => work.Impressions).SelectMany(sheet => sheet.Whereabouts).Select(link => link.To.Place).OfType<long>().CountBy(place => place).MaxBy(pair => pair.Value).Key;
        Assert.Equal(_demo.LookAround.Book().PathOf(used), suggested.Places[0]);
    }

    private static IEnumerable<string> ByFrequency(IEnumerable<string?> texts) =>
        texts.OfType<string>().CountBy(text => text).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => pair.Key);

    private List<(Work Work, Impression Sheet)> Sheets(Func<Impression, bool> which) =>
        [.. from work in _works from sheet in work.Impressions where which(sheet) select (work, sheet)];
}
