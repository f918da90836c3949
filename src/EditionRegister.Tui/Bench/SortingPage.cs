using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Bench;

/// <summary>The dry pulls of one run, sorted sheet by sheet in the order of the pile; each key is written at once.</summary>
internal sealed class SortingPage(Desk desk, long work, int run) : TrayPage
{
    private readonly Stack<SortedBefore> _before = new();
    private readonly HashSet<long> _marked = [];
    private Work? _work;
    private PrintRun? _run;
    private IReadOnlyList<Impression> _pile = [];
    private IReadOnlyList<TrayGroup> _groups = [];
    private bool _wasOpen;

    // Past the last sheet no key sorts: one press too many would sort the last one again.
    private bool _isThrough;

    public override string Title => "Sorting";

    public override string Explains =>
        "Go through the pile from the top: each sheet is kept for the edition, spare, left out for a fault, or held out as a proof. One key sorts the sheet and moves to the next; "
        + "every key is written at once, so nothing is lost whenever you stop. To sort several at once, mark them with a and press the key for all. "
        + "Backspace takes the last sorting back. A sheet that bears a number stays a kept sheet. Letters under the numbers say how each sheet is sorted: "
        + PileTray.Legend + ".";

    public override IReadOnlyList<TrayGroup> Groups => _groups;

    public override IReadOnlyList<KeyDeed> Keys => _pile.Count == 0 ? [] : _isThrough ? [TakesBack, KeyDeed.Doing("Left", "look again", () => _isThrough = false)] :
    [
        Sorts("k", "keep", "kept", "Keeps the sheet for the edition."),
        Sorts("s", "spare", "spare", "Lays the sheet aside as a spare: good, and beyond the edition."),
        KeyDeed.Opens("x", "left out", LeaveOut) with { Explained = "Leaves the sheet out; then one key says for which fault." },
        Sorts("h", "hold out", "held-out", "Holds the sheet out as a proof: a state, progressive or trial proof."),
        KeyDeed.Doing("Space", "move on", () => GoOn(Current + 1)) with { Explained = "Leaves the sheet as it is and moves on; Left and Right move too." },
        TakesBack,
        .. _work is { } shown && _run is { } here && SortingText.HeldOut(here, _pile) is not null
            ? [KeyDeed.Opens("f", "correct its figures", () => RunForms.Edit(desk, shown, here)) with { Explained = "Puts right what was counted of the print run: how many were held out." }]
            : Array.Empty<KeyDeed>(),
        .. GradingDoor.Keys(desk, work, run, _pile, _pile[Current].Grade is null ? null : _pile[Current]),
        KeyDeed.Doing("a", "mark several", Mark) with { Explained = "Marks the sheet, or no more, and moves on: the next sorting key is for all that are marked." },
    ];

    public override async Task RefreshAsync()
    {
        var found = await desk.Store.Do(register => register.LookAround.Work(work));
        Show(found);

        // Where sorting was left off is where it goes on.
        if (!_wasOpen && _pile.ToList().FindIndex(sheet => sheet.Standing == "pulled") is >= 0 and var first)
        {
            Current = first;
        }

        _wasOpen = true;
    }

    public override bool Moves(string key, int height)
    {
        var moved = base.Moves(key, height);
        _isThrough &= !moved;

        return moved;
    }

    public override IReadOnlyList<Line> Head(int width) => _work is { } shown && _run is { } here ? SortingText.Head(shown, here, _pile, width) : [];

    public override IReadOnlyList<Line> Foot(int width) => _work is { } shown && _pile.Count > 0
        ? SortingText.Foot(shown, _pile, Current, _marked.Count, _isThrough, width)
        : [Line.Of("No sheet lies in this pile.", Tone.Quiet)];

    private IReadOnlyList<Impression> Meant() => _marked.Count > 0 ? [.. _pile.Where(sheet => _marked.Contains(sheet.Id))] : [_pile[Current]];

    private KeyDeed TakesBack => new("Backspace", "take it back", TakeBackAsync) { Explained = "Steps back and takes the last sorting on this page back: the sheets are sorted as they were before." };

    private KeyDeed Sorts(string key, string does, string standing, string explained) =>
        new(key, does, () => SortAsync(standing, null)) { Explained = explained + " All marked ones, where some are." };

    private Opening? LeaveOut()
    {
        var meant = Meant();

        return FaultChoice.Of(meant.Count == 1 ? $"sheet {Counted.Figure(meant[0].Ordinal)}" : "what is marked", _work!.OwnWords, fault => SortAsync("left-out", fault.Word));
    }

    private async Task<Opening?> SortAsync(string standing, string? fault)
    {
        var sheets = Meant();
        var changing = sheets.Where(sheet => sheet.Standing != standing || sheet.Fault != fault).ToList();

        if (changing.Count > 0)
        {
            var (found, isAsSeen) = await desk.Store.Do(register =>
            {
                var now = register.LookAround.Work(work);

                if (!AsSeen(now, changing))
                {
                    return (now, false);
                }

                register.SortPulls.Run(Choice(changing), standing, fault);

                return (register.LookAround.Work(work), true);
            });
            Show(found);

            if (!isAsSeen)
            {
                desk.Say("Someone sorted this meanwhile. Nothing was changed; it is shown as it stands now, so look again.", Tone.Warning);

                return null;
            }

            _before.Push(SortedBefore.Of(changing, _pile));
            desk.Undo = new Undoing("the sorting", async () => await TakeLastBackAsync() ?? "There is nothing to take back.");
            desk.Say(EditionSaid.Sorted(changing.Count, standing), Tone.Good);
        }

        _marked.Clear();
        GoOn(_pile.ToList().FindIndex(sheet => sheet.Id == sheets[^1].Id) + 1);
        Show(_work!);

        return null;
    }

    private async Task<Opening?> TakeBackAsync()
    {
        if (await TakeLastBackAsync() is { } said)
        {
            desk.Say(said, Tone.Good);
        }
        else
        {
            GoOn(Current - 1);
        }

        return null;
    }

    private async Task<string?> TakeLastBackAsync()
    {
        if (!_before.TryPop(out var last))
        {
            return null;
        }

        var found = await desk.Store.Do(register =>
        {
            foreach (var same in last.Sheets.GroupBy(sheet => (sheet.Standing, sheet.Fault, sheet.FaultNote)))
            {
                register.SortPulls.Run(Choice([.. same]), same.Key.Standing, same.Key.Fault, same.Key.FaultNote);
            }

            return register.LookAround.Work(work);
        });
        desk.Undo = null;
        Show(found);
        GoOn(last.First);

        return $"{Counted.Sheets(last.Sheets.Count)} sorted back: {string.Join(", ", last.Sheets.Select(sheet => Called.Plain(sheet.Standing)).Distinct())} again.";
    }

    private void GoOn(int to)
    {
        _isThrough = to >= _pile.Count && _marked.Count == 0;
        Current = Math.Clamp(to, 0, Math.Max(0, _pile.Count - 1));
    }

    private void Mark()
    {
        var sheet = _pile[Current].Id;

        if (!_marked.Remove(sheet))
        {
            _marked.Add(sheet);
        }

        GoOn(Current + 1);
        Show(_work!);
    }

    private void Show(Work found)
    {
        _work = found;
        _run = found.Runs.FirstOrDefault(one => one.Ordinal == run);
        _pile = _run is { } here ? [.. found.Impressions.Where(sheet => sheet.Run == here.Id).OrderBy(sheet => sheet.Ordinal)] : [];
        _groups = PileTray.Of(_pile, _marked);
    }

    private static bool AsSeen(Work now, IEnumerable<Impression> seen) =>
        seen.All(sheet => now.Impressions.FirstOrDefault(other => other.Id == sheet.Id) is { } other && other.Standing == sheet.Standing && other.Fault == sheet.Fault);

    private static ImpressionChoice Choice(IReadOnlyList<Impression> sheets) => new() { Sheets = string.Join(", ", sheets.Select(sheet => sheet.ShownCode)) };
}
