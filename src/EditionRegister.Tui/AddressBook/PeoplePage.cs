using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Everyone in the address book, found as you type.</summary>
internal sealed class PeoplePage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns = [new("name", 20, Stretch: 2), new("what", 12), new("in public", 16, Stretch: 1), new("class", 8)];

    private IReadOnlyList<Person> _all = [];
    private Listing _rows = Listing.Of<Person>(Columns, [], _ => []);

    public override string Title => "Address book";

    public override string Explains => "Everyone the register knows: artists, pupils, printers, buyers, galleries, schools.";

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0 ? "Nobody is called so." : "Nobody is in the address book yet. Press n to record someone.";

    public override string? FindsIn => "name or class code";

    public override IReadOnlyList<KeyDeed> Keys => [KeyDeed.Opens("n", "record someone", () => PersonForm.New(desk))];

    public override async Task RefreshAsync()
    {
        var book = await desk.Store.Do(register => register.LookAround.Book());
        _all = [.. book.People.Values.OrderBy(person => SearchText.Fold(person.SortName ?? person.FullName), StringComparer.Ordinal)];
        Filtered();
    }

    protected override void Filtered()
    {
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        List<Person> found = [.. _all.Where(person => words.All(word => SearchText.Fold($"{person.FullName} {person.ClassCode}").Contains(word, StringComparison.Ordinal)))];
        _rows = Listing.Of(Columns, found, person => [person.FullName, person.IsProtected ? "pupil" : person.What, person.PublicText, person.ClassCode ?? ""]);
    }
}
