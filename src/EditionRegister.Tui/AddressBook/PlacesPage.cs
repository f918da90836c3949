using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Every place as a path from the outside in, with the sheets that lie there.</summary>
internal sealed class PlacesPage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns = [new("place", 36, Stretch: 1), new("kept by", 18), new("here", 6, IsRight: true), new("with inside", 11, IsRight: true)];

    private IReadOnlyList<PlaceListed> _all = [];
    private IReadOnlyList<PlaceListed> _found = [];
    private Listing _rows = Listing.Of<PlaceListed>(Columns, [], _ => []);

    public override string Title => "Places";

    public override string Explains =>
        "Where sheets lie: studio, plan chest, drawer, folder; each place lies in another, and is shown as the way to it from the outside in. "
        + "“Here” counts the sheets that lie in the place itself, “with inside” those in the places inside it too. Enter opens a place with all that lies in it. v goes back to the people.";

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0 ? "No place is called so. Esc shows all." : "No place is recorded yet. Press n and name one from the outside in, such as Studio › Plan chest › Drawer 1.";

    public override string? FindsIn => "any part of the way to it";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Here is { } here ? [KeyDeed.Opens("Enter", "open", () => new PlacePage(desk, here.Id))] : (KeyDeed[])[],
        new("n", "record a place", () => PlaceForm.NewAsync(desk, Here?.Path)),
        .. Here is { } edited ? [new KeyDeed("e", "edit", () => PlaceForm.EditAsync(desk, edited.Id)) { Explained = "Puts right its name, who keeps it or its note, or moves it into another place or out of one, with everything in it." }] : (KeyDeed[])[],
        KeyDeed.Opens("v", "people", () => Back.Once) with { Explained = "Turns back to the people." },
    ];

    private PlaceListed? Here => _found.Count > 0 ? _found[Current] : null;

    public override async Task RefreshAsync()
    {
        var before = Here?.Id;
        _all = await desk.Store.Do(register => register.LookAround.Places(null));
        Filtered();
        Current = Math.Max(0, _found.ToList().FindIndex(one => one.Id == before));
    }

    protected override void Filtered()
    {
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        _found = [.. _all.Where(one => words.All(word => SearchText.Fold(one.Path).Contains(word, StringComparison.Ordinal)))];
        _rows = Listing.Of(Columns, _found, one => [one.Path, one.KeeperName ?? "", Count(one.Sheets), Count(one.Within)]);
    }

    private static string Count(long sheets) => sheets == 0 ? "" : Counted.Figure(sheets);
}
