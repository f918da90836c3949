using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Welcome;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Everyone in the address book, found as you type.</summary>
internal sealed class PeoplePage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns =
        [new("name", 20, Stretch: 3), new("what", 12), new("in public", 18, Stretch: 2), new("class", 7), new("has", 4, IsRight: true), new("owns", 4, IsRight: true)];

    private IReadOnlyList<(PersonListed Listed, string Folded)> _all = [];
    private IReadOnlyList<PersonListed> _found = [];
    private Listing _rows = Listing.Of<PersonListed>(Columns, [], _ => []);

    public override string Title => "Address book";

    public override string Explains =>
        "Everyone the register knows: artists, pupils, printers, buyers, galleries, schools. Enter opens someone with all they have, own and made. "
        + "“In public” is how much of a name documents show; who made or printed a work is named whole, unless protected. "
        + "“Has” counts the sheets that are with them, “owns” those that are theirs: a gallery has what it does not own. "
        + "Press v for the places: studio, plan chest, drawers.";

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0 ? "Nobody is called so. Esc shows all."
        : "Nobody is in the address book yet.\n\nBegin with yourself: press n to record someone. Then press o and say that it is you who writes in this register. Press p to record a class of pupils, one after another.";

    public override string? FindsIn => "name or class code";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Here is { } here ? [KeyDeed.Opens("Enter", "open", () => new PersonPage(desk, here.Person.Id))] : (KeyDeed[])[],
        KeyDeed.Opens("n", "record someone", () => PersonForm.New(desk)) with { Explained = "Puts a person or an organisation into the address book." },
        new("p", "record pupils", () => PupilForm.OpenAsync(desk)) { Explained = "Records a class of pupils, one after another: the form opens again after each." },
        .. Here is { } edited ? [KeyDeed.Opens("e", "edit", () => PersonForm.Edit(desk, edited.Person)) with { Explained = "Puts right what is recorded of them." }] : (KeyDeed[])[],
        KeyDeed.Opens("v", "places", () => new PlacesPage(desk)) with { Explained = "Turns to the places where sheets lie." },
        new("o", "settings", () => SettingsForm.OpenAsync(desk)) { Explained = "The register's settings: who writes in it, currency, sizes, QR links, the label printer." },
    ];

    private PersonListed? Here => _found.Count > 0 ? _found[Current] : null;

    public override async Task RefreshAsync()
    {
        var before = Here?.Person.Id;
        var people = await desk.Store.Do(register => register.LookAround.People(null));
        _all = [.. people.Select(one => (one, SearchText.Fold($"{one.Person.FullName}\n{one.Person.SortName}\n{one.Person.ClassCode}")))];
        Filtered();
        Current = Math.Max(0, _found.ToList().FindIndex(one => one.Person.Id == before));
    }

    protected override void Filtered()
    {
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        _found = [.. _all.Where(one => words.All(word => one.Folded.Contains(word, StringComparison.Ordinal))).Select(one => one.Listed)];
        _rows = Listing.Of(Columns, _found, Row);
    }

    private static IReadOnlyList<string> Row(PersonListed one) =>
        [one.Person.FullName, PersonFacts.What(one.Person), one.Person.PublicText, one.Person.ClassCode ?? "", Count(one.Has), Count(one.Owns)];

    private static string Count(long sheets) => sheets == 0 ? "" : Counted.Figure(sheets);
}
