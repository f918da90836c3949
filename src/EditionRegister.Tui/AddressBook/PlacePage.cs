using EditionRegister.Domain;
using EditionRegister.Domain.People;
using EditionRegister.Store.Reading;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Stock;
using EditionRegister.UseCases.Looking;
using Book = EditionRegister.Domain.People.AddressBook;

namespace EditionRegister.Tui.AddressBook;

/// <summary>A place whole: the places inside it, and every sheet that lies in it or in one of them.</summary>
internal sealed class PlacePage : ListPage
{
    private static readonly ListColumn[] Columns = [new("", 7), new("number", 12, Stretch: 1), new("title", 18, Stretch: 2), new("since", 10), new("where", 18, Stretch: 2)];

    private readonly Desk _desk;
    private readonly long _place;
    private readonly KeptMarks _marks;
    private PlaceSeen? _seen;
    private List<KeptRow> _rows = [];

    public PlacePage(Desk desk, long place)
    {
        (_desk, _place) = (desk, place);
        _marks = new KeptMarks(desk, () => _rows, () => Here, () => $"in {Title}");
    }

    public override string Title => _seen?.Place.Name ?? $"Place {Counted.Figure(_place)}";

    public override string Explains =>
        "A place: first the places inside it, then the blocks and plates, and every sheet that lies in it or in one of those, in the order in which they came. Enter opens a place or a sheet. "
        + "Mark sheets with Space to do one thing to several of them, such as putting them away elsewhere; without marks it is done to the sheet the cursor is on.";

    public override Listing Rows => new(Columns, _rows.Count, row => _rows[row].Cells) { IsMarked = row => _rows[row].Code is { } code && _desk.Marked.Holds(code) };

    public override string Empty => _seen is null ? "This place is not in the register." : "Nothing lies here.";

    public override IReadOnlyList<KeyDeed> Keys => _seen is not { } seen ? [] :
    [
        .. Here is { } here ? [KeyDeed.Opens("Enter", here.How == "place" ? "open the place" : here.Code is null ? "open the work" : "open the sheet", () => here.Open())] : (KeyDeed[])[],
        .. _marks.Keys(() => Current++, "m",
        [
            new("e", "edit", () => PlaceForm.EditAsync(_desk, _place)) { Explained = "Puts right its name, who keeps it or its note, or moves it into another place or out of one, with everything in it." },
            KeyDeed.Opens("k", "stock-take", () => new StockTakesPage(_desk, _place)) with { Explained = "Counts what lies here by its codes, and shows earlier counts, deliveries and returns." },
            KeyDeed.Opens("l", "see it as a list", () => new PlaceListPage(_desk, _place)) with { Explained = "Shows everything that lies here, place by place, with owners and condition; and writes it to a file." },
            new("n", "record one inside", () => PlaceForm.NewAsync(_desk, seen.Listed.Path)) { Explained = "Records a place inside this one." },
        ]),
    ];

    private KeptRow? Here => _rows.Count > 0 ? _rows[Current] : null;

    public override IReadOnlyList<Line> Head(int width) => _seen is not { } seen ? [] :
    [
        .. Wrap.Of(seen.Listed.Path, width).Take(2).Select(line => Line.Of(line, Tone.Strong)),
        .. seen.Listed.KeeperName is { } keeper ? [Line.Fact("Kept by", keeper, 12)] : (Line[])[],
        .. seen.Place.Note is { } note ? Wrap.Of(note.ReplaceLineEndings(" "), width - 12).Take(2).Select((line, at) => Line.Fact(at == 0 ? "Note" : "", line, 12)) : [],
        Line.Empty,
        Line.Of($"{Counted.Sheets(seen.Listed.Sheets)} here, {Counted.Figure(seen.Listed.Within)} with the places inside.").Then(_marks.Said is { Length: > 0 } marked ? $"   {marked}" : "", Tone.Strong),
    ];

    public override IReadOnlyList<Line> Foot(int width) =>
        _seen is { } seen && seen.Sheets.First.Count < seen.Sheets.All
            ? [Line.Of($"Listed are the first {Counted.Figure(seen.Sheets.First.Count)} of {Counted.Sheets(seen.Sheets.All)}.", Tone.Quiet)]
            : Here?.InWords(width) ?? [];

    public override async Task RefreshAsync()
    {
        try
        {
            _seen = await _desk.Store.Do(register => register.LookAround.PlaceWhole(_place));
            _rows = RowsOf(_seen);
        }
        catch (RefusedException)
        {
            (_seen, _rows) = (null, []);
            throw;
        }
    }

    private List<KeptRow> RowsOf(PlaceSeen seen)
    {
        var paths = seen.Inside.ToDictionary(place => place.Id, place => Inner(place.Path, seen.Listed.Path));

        return
        [
            .. seen.Inside.Select(place => new KeptRow("place", "", paths[place.Id], "", $"{Counted.Sheets(place.Within)} in it", null, () => new PlacePage(_desk, place.Id))),
            .. seen.Matrices.Select(pair => new KeptRow(
                pair.Thing.Kind, pair.Thing.Number, pair.Thing.Title, "", paths.GetValueOrDefault(pair.Place, "here"), null, () => new WorkPage(_desk, pair.Thing.Work))),
            .. seen.Sheets.First.Select(sheet => KeptRow.OfSheet(_desk, "sheet", sheet, WhereOf(sheet, paths))),
        ];
    }

    private static string WhereOf(KeptSheet sheet, Dictionary<long, string> paths) => sheet.Place is { } place && paths.TryGetValue(place, out var path) ? path : "here";

    /// <summary>The rest of the way, from the outer place on.</summary>
    private static string Inner(string path, string outer) => path.StartsWith(outer + Book.Inside, StringComparison.Ordinal) ? path[(outer.Length + Book.Inside.Length)..] : path;
}
