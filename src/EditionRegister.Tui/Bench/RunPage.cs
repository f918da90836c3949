using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>One section of a print run's page: what it holds, and what Enter opens.</summary>
internal sealed record RunSection(string Name, string Holds, Func<Opening?> Open);

/// <summary>A print run, section by section, with the balance of its sheets at the foot.</summary>
internal sealed class RunPage(Desk desk, long work, int run) : ListPage
{
    private static readonly ListColumn[] Columns = [new("section", 18), new("what it holds", 40, Stretch: 1)];

    private Work? _work;
    private PrintRun? _run;
    private IReadOnlyList<RunSection> _sections = [];
    private Listing _rows = Listing.Of<RunSection>(Columns, [], _ => []);

    public override string Title => $"Print run {Counted.Figure(run)}";

    public override string Explains =>
        "One campaign of pulling sheets, in sections: the sorting of its dry pulls, and what was counted and measured. Enter opens a section. "
        + "At the foot stands the balance of its sheets.";

    public override Listing Rows => _rows;

    public override string Empty => "This print run is gone. Esc goes back to the work.";

    public override IReadOnlyList<KeyDeed> Keys => _work is { } shown && _run is { } here
        ?
        [
            KeyDeed.Opens("Enter", "open the section", () => _sections[Current].Open()),
            KeyDeed.Opens("o", "sort the pulls", () => new SortingPage(desk, work, run)),
            KeyDeed.Opens("e", "correct this run", () => RunForms.Edit(desk, shown, here)),
        ]
        : [];

    public override async Task RefreshAsync()
    {
        var (found, units) = await desk.Store.Do(register => (register.LookAround.Work(work), register.Settings.Units));
        _work = found;
        _run = found.Runs.FirstOrDefault(one => one.Ordinal == run);
        _sections = _run is null ? [] : Sections(found, _run, units);
        _rows = Listing.Of(Columns, _sections, section => [section.Name, section.Holds]);
    }

    public override IReadOnlyList<Line> Foot(int width) => _work is { } shown && _run is { } here ? BalanceLines.Of(shown, here, width) : [];

    private IReadOnlyList<RunSection> Sections(Work found, PrintRun here, string units) =>
    [
        new("Sorting", HowFar.Of(found, here), () => new SortingPage(desk, work, run)),
        .. found.Impressions.Any(sheet => sheet.Run == here.Id && sheet.Grade is not null) ? [new RunSection("Grades", Graded(found, here), () => new GradingPage(desk, work, run, first: null))] : Array.Empty<RunSection>(),
        new("Counts", RunBalance.Of(found, here), Correct),
        new("Printed", $"{here.Printed}, for: {Called.Plain(here.Purpose)}", Correct),
        new("Paper", here.Paper ?? "not known", Correct),
        new("Sizes", $"image {SizesShown.Show(here.ImageHeight, here.ImageWidth, units) ?? "not known"}, sheet {SizesShown.Show(here.SheetHeight, here.SheetWidth, units) ?? "not known"}", Correct),
        new("State", here.State ?? "none recorded", Correct),
        .. here.Note is { } note ? [new RunSection("Note", note, Correct)] : Array.Empty<RunSection>(),
    ];

    private static string Graded(Work found, PrintRun here)
    {
        var pile = found.Impressions.Where(sheet => sheet.Run == here.Id && sheet.Standing != "left-out").ToList();

        return $"{Counted.Figure(pile.Count(sheet => sheet.Grade is not null))} of {Counted.Sheets(pile.Count)} graded";
    }

    private Form? Correct() => _work is { } shown && _run is { } here ? RunForms.Edit(desk, shown, here) : null;
}
