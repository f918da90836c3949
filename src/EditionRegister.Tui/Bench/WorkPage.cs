using EditionRegister.Domain.Works;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>A work whole: its people, print runs, what it is printed from and its editions, with the balance of the sheets always in view.</summary>
internal sealed class WorkPage(Desk desk, long work) : ListPage
{
    private static readonly ListColumn[] Columns = [new("what", 12), new("which", 24, Stretch: 1), new("how it stands", 27)];

    private Work? _work;
    private IReadOnlyList<WorkRow> _lines = [];
    private Listing _rows = Listing.Of<WorkRow>(Columns, [], _ => []);

    public override string Title => _work is { } shown ? Called.Work(shown) : "A work";

    public override string Explains =>
        "One work with all that belongs to it. Below its people stand its print runs, the blocks, plates or screens it is printed from, and its editions. "
        + "The line “Next” says which key takes the work a step further: record a print run, sort the pulls, rehearse and declare the edition, give the numbers and sign. "
        + "At the foot stands the balance of the sheets: what was started is what is unused, what is spoiled and what lies in the pile; what is missing is said. "
        + "Enter opens a print run with its passes, and a block or plate with its states; there or with f is stated what became of it. On an edition Enter opens its map in the plan chest.";

    public override Listing Rows => _rows;

    public override string Empty => "Nothing is recorded of this work but its title. Press b to record the block or plate, n to record a print run.";

    public override IReadOnlyList<KeyDeed> Keys => _work is { } shown ? WorkKeys.Of(desk, shown, Here) : [];

    private WorkRow? Here => _lines.Count > 0 ? _lines[Current] : null;

    public override async Task RefreshAsync()
    {
        var (found, sizes) = await desk.Store.Do(register => (register.LookAround.Work(work), register.Settings.Sizes));
        _work = found;
        _lines = WorkRow.Of(found, sizes);
        _rows = Listing.Of(Columns, _lines, line => line.Cells);
    }

    public override IReadOnlyList<Line> Head(int width)
    {
        if (_work is not { } shown)
        {
            return [];
        }

        var (key, sentence) = NextStep.Of(shown);

        return
        [
            Line.Fact("Made by", string.Join("; ", new[] { shown.ShownMaker }.Concat(Others(shown))), 10),
            Line.Fact("Year", $"{shown.Year.Text ?? "not known"}{(shown.Year.InOtherWords is { } year ? $" ({year})" : "")}, {shown.Technique ?? "technique not known"}", 10),
            .. shown.TechniqueRead is { } technique ? [Line.Fact("Read as", technique, 10)] : Array.Empty<Line>(),
            .. shown.Note is { } note ? Wrap.Of(note, Math.Max(10, width - 10)).Take(2).Select((line, at) => Line.Fact(at == 0 ? "Note" : "", line, 10)) : [],
            .. Wrap.Of($"{key} {sentence}", Math.Max(10, width - 10)).Select((line, at) => Line.Of(at == 0 ? "Next      " : "          ", Tone.Quiet).Then(line, Tone.Good)),
            Line.Empty,
        ];
    }

    public override IReadOnlyList<Line> Foot(int width) => _work is { Runs.Count: > 0 } shown ? BalanceLines.Of(shown, Here?.Run ?? shown.Runs[^1], width) : [];

    private static IEnumerable<string> Others(Work work) =>
        from role in work.Roles
        where role.Role != Role.Maker.Word
        select $"{Role.Of(role.Role)?.Name ?? role.Role} {work.Book.NameOf(role.Person)}";
}
