using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.ReadingIn;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;
using Chest = EditionRegister.UseCases.Looking.PlanChest;

namespace EditionRegister.Tui.PlanChest;

/// <summary>The first room: every edition, and every work that has none yet, found as you type.</summary>
internal sealed class PlanChestPage(Desk desk) : ListPage
{
    private Chest? _chest;
    private ChestFound? _found;
    private Listing _rows = ChestRows.Of([], areCounted: true);
    private bool _isReading;

    public override string Title => "Plan chest";

    public override string Explains =>
        "Everything you have printed, edition by edition, as it lies in the drawers. "
        + "Type / and then a few letters of a title, a maker, a place, an owner or a sheet's code: with each letter the list grows shorter. "
        + "A number, a date or a technique is understood as you write it (A/P 2, c. 2019, spring 2024, etching), and beside the text stands what it was taken for. "
        + "Enter opens an edition as a tray of its numbers, where you see at one glance which are here, away or sold; if you looked for a number, on that one. "
        + "Here, away and sold count the numbered sheets of an edition, or all sheets of a work without one. "
        + "A work whose edition is not declared yet opens at the Bench, where editions are made.";

    public override Listing Rows => _rows;

    public override string? FindsIn => "title, maker, code, place, owner, number, date, technique";

    public override string? Understood => _found is { } found ? SoughtSaid.Short(found.Sought) : null;

    public override string Empty =>
        Filter.Length > 0 ? "Nothing is found by that. Esc shows all."
        : _chest is null ? "Opening the plan chest…"
        : "The plan chest is empty.\n\nBegin with a work: press 2 for the Bench and record what you print there. Or press a to read in a list you already have, as a CSV file.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Here is { } line ? [KeyDeed.Opens("Enter", "open", () => Opened(line)) with { Explained = "Opens the edition as a tray of its numbers, or a work without an edition at the Bench." }] : (KeyDeed[])[],
        KeyDeed.Opens("n", "new work", () => new GoTo(RoomName.Bench)) with { Explained = "Goes to the Bench, where works are recorded and printed." },
        KeyDeed.Opens("a", "read in a file", () => ReadInForm.New(desk)) with { Explained = "Takes a list you already have, a CSV file, into the register. It is shown first, and can be undone as a whole." },
        KeyDeed.Opens("t", "what is due", () => new DuePage(desk)) with { Explained = "Lists what is to be back, collected, answered for or let go: over already, or soon." },
        new KeyDeed("k", "another's print", () => HoldForm.OfAsync(desk)) { Explained = "Records one print of somebody else's edition that is here, such as 14/75, with its work and its maker in the same go." },
        .. Here is not null ? [KeyDeed.Opens("v", "list of everything", Everything) with { Explained = "Writes lists and papers of every sheet that is not left out." }] : (KeyDeed[])[],
    ];

    private ChestLine? Here => _found is { Count: > 0 } found ? found[Current] : null;

    public override IReadOnlyList<Line> Head(int width) => _isReading ? [Line.Of("reading places and codes…", Tone.Quiet)] : [];

    public override IReadOnlyList<Line> Foot(int width) => Here is { } line ? [Line.Of(new string('─', width), Tone.Quiet), .. ChestRows.InWords(line, AreCounted, width)] : [];

    public override async Task RefreshAsync()
    {
        if (_chest is { } chest)
        {
            await desk.Store.Do(_ => chest.Refresh());
        }
        else
        {
            _chest = await desk.Store.Do(Open);
        }

        FindAgain();

        if (!AreCounted && !_isReading)
        {
            _isReading = true;
            desk.InBackground(ReadSheetsAsync);
        }
    }

    protected override void Filtered()
    {
        _found = _chest?.Find(Filter);
        _rows = ChestRows.Of(_found ?? (IReadOnlyList<ChestLine>)[], AreCounted);
    }

    private bool AreCounted => _chest is { SheetsAreRead: true };

    private static Chest Open(UseCases.Register register)
    {
        var chest = register.PlanChest;
        chest.Open();

        return chest;
    }

    private async Task ReadSheetsAsync()
    {
        try
        {
            await desk.Store.Do(_ => _chest!.ReadSheets());
        }
        finally
        {
            _isReading = false;
        }

        FindAgain();
    }

    /// <summary>What is found may have changed; the cursor stays on its line.</summary>
    private void FindAgain()
    {
        var before = Here;
        Filtered();

        for (var row = 0; before is not null && row < _rows.Count; row++)
        {
            if (_found![row].Work == before.Work && _found[row].Edition == before.Edition)
            {
                Current = row;
                break;
            }
        }
    }

    private Opening Opened(ChestLine line) =>
        line.Edition is { } edition ? new EditionPage(desk, edition, _found?.Sought.Number) : new GoTo(RoomName.Bench, new Bench.WorkPage(desk, line.Work));

    private Opening Everything() => PaperForms.Of(desk, new ImpressionChoice { All = true }, "every sheet that is not left out");
}
