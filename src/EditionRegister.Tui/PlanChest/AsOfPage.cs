using EditionRegister.Domain.Editions;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.Tui.PlanChest;

/// <summary>An edition as the register had it at the end of a day, to be read only, with what is known of that day now where the two differ.</summary>
internal sealed class AsOfPage(Desk desk, long edition, DateOnly day) : TextPage
{
    private string _heading = "";
    private MapThen? _then;

    public override string Title => $"As it stood on {ThenShown.Iso(day)}, to be read only";

    public override string Explains =>
        "What the register said of this edition when the day ended: the logbook up to then, read again from its beginning. Nothing can be changed here. "
        + "Above stand the sheets of which something else is known now, because it was recorded later or put right since: what was recorded then, and what is known now of that same day. "
        + "Moves and sales bear dates and are compared; numbers and titles bear none. What was erased since cannot be seen any more, then as now.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override async Task RefreshAsync() => (_heading, _then) = await desk.Store.Do(register =>
    {
        using var past = register.LookBack.To(day);

        return (ThenShown.Heading(past), past.Map(edition));
    });

    public override IReadOnlyList<Line> Head(int width) => [.. Wrap.Of(_heading, width).Select(line => Line.Of(line, Tone.Warning))];

    public override IReadOnlyList<Line> Text(int width) => _then is not { } then ? [] :
    [
        .. Known(then, width),
        .. then.Map.Numberings.SelectMany(numbering => Numbering(numbering, width)),
        .. then.Map.Beside.Count > 0 ? [Line.Empty, Line.Of("Beside the numbers:", Tone.Strong), .. Cells(then.Map.Beside, width)] : (Line[])[],
        Line.Empty,
        .. FactLines.Of(then.Map.Totals.Select(total => (total.Label, (string?)total.Value)), width),
    ];

    private static IEnumerable<Line> Known(MapThen then, int width)
    {
        // The page is of one work, so its title need not stand in every line.
        var table = ThenShown.Differences([.. then.Differences.Select(one => one with { Title = "" })]);

        return
        [
            Line.Empty,
            .. then.Differences.Count == 0 ? (Line[])[Line.Of(ThenShown.NothingNew, Tone.Good)] : [Line.Of(table.Heading, Tone.Strong), .. TableLines.Of(table, width)],
            .. Wrap.Of(ThenShown.Undated, width).Select(line => Line.Of(line, Tone.Quiet)),
        ];
    }

    private static IEnumerable<Line> Numbering(MapNumbering numbering, int width) =>
        [Line.Empty, Line.Of($"{numbering.Heading}, {numbering.Span}", Tone.Strong), .. Cells(numbering.Cells, width)];

    private static IReadOnlyList<Line> Cells(IReadOnlyList<MapCell> cells, int width) => TableLines.Of(
        new ShownTable("", [new("number"), new("code"), new("where")], [.. cells.Select(cell => (string[])[cell.Spelled, cell.Sheet?.ShownCode ?? "", cell.Where])]), width);
}
