using EditionRegister.Domain.Shows;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Shows;

/// <summary>Every exhibition, sale and fair, found as you type.</summary>
internal sealed class ShowsPage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns =
        [new("name", 18, Stretch: 2), new("kind", 10), new("when", 24), new("place", 11, Stretch: 1), new("sheets", 6, IsRight: true)];

    private IReadOnlyList<(Show Show, string Place)> _all = [];
    private IReadOnlyList<(Show Show, string Place)> _found = [];
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => "Shows";

    public override string Explains =>
        "An exhibition, a sale, a fair or an open studio, with the list of the sheets that are in it, stands here as a show. "
        + "Make one with n, open it with Enter, and put sheets on its list there. A sheet on a list stays where it is and whose it is: listing it moves and sells nothing.";

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0 ? "No show is called so." : "No show is recorded yet. Press n to make one: an exhibition, a sale or a fair.";

    public override string? FindsIn => "name, kind, date or place";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. _found.Count > 0 ? [KeyDeed.Opens("Enter", "open the show", () => new ShowPage(desk, _found[Current].Show.Id))] : (KeyDeed[])[],
        new("n", "make a show", async () => ShowForm.New(desk, await ShowKnown.ReadAsync(desk))),
    ];

    public override async Task RefreshAsync()
    {
        var (shows, book) = await desk.Store.Do(register => (register.LookAround.Shows(), register.LookAround.Book()));

        // The latest is wanted most.
        _all = [.. shows.OrderByDescending(show => show.Opens.Earliest ?? show.Closes.Earliest ?? DateOnly.MaxValue).ThenByDescending(show => show.Id).Select(show => (show, PlaceOf(book, show)))];
        Filtered();
    }

    protected override void Filtered()
    {
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        _found = [.. _all.Where(row => words.All(word => SearchText.Fold(string.Join(' ', Cells(row))).Contains(word, StringComparison.Ordinal)))];
        _rows = Listing.Of(Columns, _found, Cells);
    }

    private static string[] Cells((Show Show, string Place) row) =>
        [row.Show.ShownName, row.Show.Kind, ShowsShown.When(row.Show) ?? "", row.Place, Counted.Figure(row.Show.Listed.Count())];

    private static string PlaceOf(Domain.People.AddressBook book, Show show) => show.Place is { } place ? book.PathOf(place) : "";
}
