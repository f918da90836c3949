using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>One section of a print run's page: what it holds, and what Enter opens.</summary>
internal sealed record RunSection(string Name, string Holds, Func<Task<Opening?>> OpenAsync);

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
        "One campaign of pulling sheets, in sections: its passes through the press, each in a line, the sorting of its dry pulls, and what was counted and measured. Enter opens a section, "
        + "on a pass it opens the form that puts it right; p records the next pass. Where the sheets are still under way, l lays the pile after the last pass and gives every sheet its code. "
        + "At the foot stands the balance of its sheets.";

    public override Listing Rows => _rows;

    public override string Empty => "This print run is gone. Esc goes back to the work.";

    public override IReadOnlyList<KeyDeed> Keys => _work is { } shown && _run is { } here
        ?
        [
            new("Enter", "open the section", () => _sections[Current].OpenAsync()),
            .. Passes(shown, here),
            .. here.IsUnderWay(shown.Impressions.Count(sheet => sheet.Run == here.Id))
                ? new KeyDeed[] { KeyDeed.Opens("l", "lay the pile", () => PileForm.Of(desk, shown, here)) with { Explained = "The last pass is done: every sheet that came through gets its code, and so do the proofs held out on the way." } }
                : [KeyDeed.Opens("o", "sort the pulls", () => OnTheRack.Sorting(desk, shown, here))],
            KeyDeed.Opens("e", "correct this run", () => RunForms.Edit(desk, shown, here)),
        ]
        : [];

    public override async Task RefreshAsync()
    {
        var (found, sizes) = await desk.Store.Do(register => (register.LookAround.Work(work), register.Settings.Sizes));
        _work = found;
        _run = found.Runs.FirstOrDefault(one => one.Ordinal == run);
        _sections = _run is null ? [] : Sections(found, _run, sizes);
        _rows = Listing.Of(Columns, _sections, section => [section.Name, section.Holds]);
    }

    public override IReadOnlyList<Line> Foot(int width) => _work is { } shown && _run is { } here
        ? [.. Current < here.Passes.Count ? Told(shown, here.Passes[Current], width) : [], .. BalanceLines.Of(shown, here, width)]
        : [];

    /// <summary>The pass of the current line whole, where a list has no room for it.</summary>
    private static IEnumerable<Line> Told(Work work, Pass pass, int width)
    {
        var who = pass.People.Count == 0 ? "" : $" By {string.Join(" and ", pass.People.Select(one => work.Book.NameOf(one.Person)))}.";
        var note = pass.Note is null ? "" : $" Note: {pass.Note}";

        return Wrap.Of($"{Counted.Figure(pass.Ordinal)} · {PassText.Of(work, pass)}. Done: {pass.Done}.{who}{note}", width).Select(line => Line.Of(line, Tone.Strong));
    }

    private IReadOnlyList<RunSection> Sections(Work found, PrintRun here, SizeStyle sizes) =>
    [
        .. here.Passes.Select(pass => new RunSection(
            $"Pass {Counted.Figure(pass.Ordinal)}", PassText.Of(found, pass), () => PassForm.EditAsync(desk, found, here, pass))),
        new("Sorting", HowFar.Of(found, here), () => Task.FromResult<Opening?>(OnTheRack.Sorting(desk, found, here))),
        .. found.Impressions.Any(sheet => sheet.Run == here.Id && sheet.Grade is not null) ? [new RunSection("Grades", Graded(found, here), () => Task.FromResult<Opening?>(new GradingPage(desk, work, run, first: null)))] : Array.Empty<RunSection>(),
        .. here.Ready.IsKnown ? [new RunSection("Rack", RackText.When(here.Ready, desk.Today), Correct)] : Array.Empty<RunSection>(),
        new("Counts", RunBalance.Of(found, here), Correct),
        new("Printed", $"{here.Printed}, for: {Called.Plain(here.Purpose)}", Correct),
        new("Paper", here.Paper ?? "not known", Correct),
        new("Sizes", $"image {SizesShown.Show(here.ImageHeight, here.ImageWidth, sizes) ?? "not known"}, sheet {SizesShown.Show(here.SheetHeight, here.SheetWidth, sizes) ?? "not known"}", Correct),
        new("State", here.State ?? "none recorded", Correct),
        .. Special(here) is { Length: > 0 } special ? [new RunSection("Also", special, Correct)] : Array.Empty<RunSection>(),
        .. here.Note is { } note ? [new RunSection("Note", note, Correct)] : Array.Empty<RunSection>(),
    ];

    private static string Graded(Work found, PrintRun here)
    {
        var pile = found.Impressions.Where(sheet => sheet.Run == here.Id && sheet.Standing != "left-out").ToList();

        return $"{Counted.Figure(pile.Count(sheet => sheet.Grade is not null))} of {Counted.Sheets(pile.Count)} graded";
    }

    private Task<Opening?> Correct() => Task.FromResult<Opening?>(_work is { } shown && _run is { } here ? RunForms.Edit(desk, shown, here) : null);

    private static string Special(PrintRun here) => string.Join(", ", new[]
    {
        here.IsCancellationProof ? "the proof of the cancellation" : null,
        here.Posthumous switch { "yes" => "printed after the maker's death", "unknown" => "whether it was printed after the maker's death is not known", _ => null },
    }.OfType<string>());

    private IEnumerable<KeyDeed> Passes(Work shown, PrintRun here)
    {
        yield return new KeyDeed("p", "record a pass", () => PassForm.NewAsync(desk, shown, here))
        {
            Explained = "Records one trip of the run's sheets through the press or under the hand; F4 fills in the last one, so that only what is different is typed.",
        };

        if (here.Passes is [.., var last])
        {
            yield return KeyDeed.Opens("t", "take a pass back", () => Question.YesNo(
                $"Take {char.ToLowerInvariant(PassText.Called(shown, here, last)[0])}{PassText.Called(shown, here, last)[1..]} back?", "take it back", () => TakeBackAsync(shown, here, last.Ordinal))) with
            {
                Explained = "Takes the last pass back where it was recorded by mistake; the logbook keeps both.",
            };
        }
    }

    private async Task<Opening?> TakeBackAsync(Work shown, PrintRun here, int pass)
    {
        var now = await desk.Store.Do(register =>
        {
            register.TakePassBack.Run(shown.Id, here.Ordinal, pass);

            return register.LookAround.Work(shown.Id);
        });
        desk.Say(BenchSaid.TakenBack(now, now.Runs.First(one => one.Id == here.Id), pass), Tone.Good);

        return null;
    }
}
