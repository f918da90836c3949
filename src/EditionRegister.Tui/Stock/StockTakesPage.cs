using EditionRegister.Domain.Stock;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Stock;

/// <summary>What was counted in a place before, and what was handed over and came back there; where a new count begins.</summary>
internal sealed class StockTakesPage(Desk desk, long place) : ListPage
{
    private static readonly ListColumn[] Columns = [new("no.", 4, IsRight: true), new("what", 10), new("when", 10), new("came to", 34, Stretch: 1), new("now", 8)];

    private IReadOnlyList<StockTakeSeen> _takes = [];
    private string _path = "";
    private bool _hasInside;

    public override string Title => "Stock-takes";

    public override string Explains =>
        "Each time this place was counted, and each time sheets went out of it or came back into it by scanned codes, newest first. Enter opens one: what was found, and what is open still. "
        + "n begins a new count; where there are places inside, i counts the place alone. r counts what came back from somebody.";

    public override Listing Rows => Listing.Of(Columns, _takes, seen =>
        [Counted.Figure(seen.Take.Id), Called.Plain(seen.Take.Occasion), seen.Take.Taken.ToString(), StockSaid.Counts(seen), StockSaid.Open(seen)]);

    public override string Empty => "This place was never counted. Press n and scan what lies here.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. _takes.Count > 0 ? [KeyDeed.Opens("Enter", "open", () => new StockTakePage(desk, _takes[Current].Take.Id))] : (KeyDeed[])[],
        KeyDeed.Opens("n", "count it now", () => new StockCountPage(desk, place, alone: false)) with { Explained = "Begins a count of this place, with what lies in the places inside it." },
        .. _hasInside ? [KeyDeed.Opens("i", "count it alone", () => new StockCountPage(desk, place, alone: true)) with { Explained = "Begins a count of this place without the places inside it." }] : (KeyDeed[])[],
        new("r", "what came back", () => ReceivingPage.AskAsync(desk, place)) { Explained = "Counts what came back from somebody against what is out with them; what is scanned is put away here." },
    ];

    public override IReadOnlyList<Line> Head(int width) => [.. Wrap.Of(_path, width).Take(2).Select(line => Line.Of(line, Tone.Strong)), Line.Empty];

    public override IReadOnlyList<Line> Foot(int width) => _takes.Count == 0 ? [] :
        [Line.Empty, .. Wrap.Of($"{StockSaid.Called(_takes[Current])}: {StockSaid.Counts(_takes[Current])}{(_takes[Current].Take.Note is { } note ? $"; {note}" : "")}.", width).Take(3).Select(line => Line.Of(line, Tone.Quiet))];

    public override async Task RefreshAsync()
    {
        (_takes, _path, _hasInside) = await desk.Store.Do(register =>
        {
            var book = register.LookAround.Book();

            return (register.LookAround.StockTakesOf(place), book.PathOf(place), book.Places.Values.Any(inner => inner.Inside == place));
        });
    }
}
