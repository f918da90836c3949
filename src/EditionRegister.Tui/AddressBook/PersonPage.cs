using EditionRegister.Domain;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Someone whole: who they are, what the public sees of them, and all they have, own and had a part in.</summary>
internal sealed class PersonPage : ListPage
{
    private static readonly ListColumn[] Columns = [new("", 8), new("number", 12), new("title", 16, Stretch: 2), new("since", 10), new("terms", 20, Stretch: 3)];

    private readonly Desk _desk;
    private readonly long _person;
    private readonly KeptMarks _marks;
    private PersonSeen? _seen;
    private List<KeptRow> _rows = [];

    public PersonPage(Desk desk, long person)
    {
        (_desk, _person) = (desk, person);
        _marks = new KeptMarks(desk, () => _rows, () => Here, () => $"with or of {Name}");
    }

    public override string Title => Name;

    public override string Explains =>
        "Someone of the address book: who they are, what labels and lists call them in public, and below that every sheet they have, every sheet they own, and the works they had a part in. "
        + "A sheet they have and own stands in the list twice. Enter opens the sheet or the work. Mark sheets with Space to do one thing to several of them, "
        + "such as taking back what a gallery had on consignment.";

    public override Listing Rows => new(Columns, _rows.Count, row => _rows[row].Cells) { IsMarked = row => _rows[row].Code is { } code && _desk.Marked.Holds(code) };

    public override string Empty => _seen is null ? "This person is not in the register." : "They have no sheet, own none, and had a part in no work.";

    public override IReadOnlyList<KeyDeed> Keys => _seen is not { } seen ? [] :
    [
        .. Here is { } here ? [KeyDeed.Opens("Enter", here.Code is null ? "open the work" : "open the sheet", () => here.Open())] : (KeyDeed[])[],
        .. _marks.Keys(() => Current++, "r", [KeyDeed.Opens("e", "edit", () => PersonForm.Edit(_desk, seen.Person)) with { Explained = "Puts right what is recorded of them." }]),
    ];

    private string Name => _seen?.Person.FullName ?? $"Person {Counted.Figure(_person)}";

    private KeptRow? Here => _rows.Count > 0 ? _rows[Current] : null;

    public override IReadOnlyList<Line> Head(int width) => _seen is not { } seen ? [] :
    [
        .. PersonFacts.Of(seen.Person, width),
        Line.Empty,
        Line.Of(Sum(seen)).Then(_marks.Said is { Length: > 0 } marked ? $"   {marked}" : "", Tone.Strong),
    ];

    public override IReadOnlyList<Line> Foot(int width) =>
        _seen is { } seen && (seen.Has.First.Count < seen.Has.All || seen.Owns.First.Count < seen.Owns.All)
            ? [Line.Of($"Listed are the first {Counted.Figure(seen.Has.First.Count)} they have and the first {Counted.Figure(seen.Owns.First.Count)} they own.", Tone.Quiet)]
            : Here?.InWords(width) ?? [];

    public override async Task RefreshAsync()
    {
        try
        {
            _seen = await _desk.Store.Do(register => register.LookAround.PersonWhole(_person));
            _rows = RowsOf(_seen);
        }
        catch (RefusedException)
        {
            (_seen, _rows) = (null, []);
            throw;
        }
    }

    private static string Sum(PersonSeen seen) =>
        $"Has {Counted.Sheets(seen.Has.All)}, owns {Counted.Figure(seen.Owns.All)}; had a part in {Counted.Of(seen.Roles.Select(role => role.Work).Distinct().Count(), "work")}.";

    private List<KeptRow> RowsOf(PersonSeen seen) =>
    [
        .. seen.Has.First.Select(sheet => KeptRow.OfSheet(_desk, "has", sheet)),
        .. seen.Owns.First.Select(sheet => KeptRow.OfSheet(_desk, "owns", sheet)),
        .. seen.Roles.Select(role => new KeptRow(Role.Of(role.Role)?.Name ?? role.Role, "", role.Title, role.Year ?? "", "", null, () => new WorkPage(_desk, role.Work))),
    ];
}
