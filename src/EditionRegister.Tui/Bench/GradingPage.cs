using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Tui.Bench;

/// <summary>The pile graded sheet by sheet with one hand: five keys beside each other give the marks, and the next sheet comes by itself.</summary>
internal sealed class GradingPage(Desk desk, long work, int run, long? first) : TextPage
{
    private readonly GradingHand _hand = new();
    private Work? _work;
    private IReadOnlyList<Impression> _pile = [];
    private int _at;
    private bool _wasOpen;
    private string? _against;
    private Grade? _before;

    public override string Title => "Grading";

    public override string Explains =>
        "Lay each sheet beside the guide sheet, or the bon à tirer, and mark five aspects one after another. The left hand stays where it is: a s d f g are the marks from 1, poor, to 5, as good as it gets; "
        + "Space says that nobody looked. With the fifth mark the sheet is written and the next one comes by itself. Enter gives the rest of the marks as on the sheet before. "
        + "Up and Down choose another aspect, Left and Right another sheet, Backspace steps back. What has no mark is not known, and is never counted as bad.";

    public override IReadOnlyList<KeyDeed> Keys => _pile.Count == 0 ? [] :
    [
        .. IsThrough ? Array.Empty<KeyDeed>() : Marking(),
        KeyDeed.Opens("b", "held against", Against) with { Explained = "Says what the sheets are held against: the guide sheet or the bon à tirer." },
        new("Esc", "back to the pile", async () =>
        {
            await WriteAsync();

            return Back.Once;
        }) { Explained = "Writes the marks given and goes back." },
    ];

    private bool IsThrough => _at >= _pile.Count;

    private Impression Here => _pile[_at];

    public override async Task RefreshAsync()
    {
        Show(await desk.Store.Do(register => register.LookAround.Work(work)));

        if (!_wasOpen)
        {
            _at = Math.Max(0, _pile.ToList().FindIndex(sheet => first is { } id ? sheet.Id == id : sheet.Grade is null));
            _against = _pile.LastOrDefault(sheet => sheet.Grade is { Against: not "unknown" })?.Grade?.Against;
            _wasOpen = true;
        }
    }

    public override IReadOnlyList<Line> Head(int width) => _work is { } shown ? GradingText.Head(shown, _pile, _against, width) : [];

    public override IReadOnlyList<Line> Text(int width) => _work is not { } shown ? []
        : _pile.Count == 0 ? [Line.Of("No sheet of this pile is to be graded: those left out are not.", Tone.Quiet)]
        : IsThrough ? GradingText.Through(width)
        : GradingText.Sheet(shown, Here, _pile.Count, _hand, width);

    private IEnumerable<KeyDeed> Marking() =>
    [
        .. GradingMarks.All.Select(one => new KeyDeed(one.Key, $"{Counted.Figure(one.Mark)} {one.Name}", () => GiveAsync(one.Mark)) { Explained = $"The aspect asked is {one.Name}: {Counted.Figure(one.Mark)} of 5. The next aspect is asked, after the last the next sheet." }),
        new("Space", "nobody looked", () => GiveAsync(null)) { Explained = "Gives the aspect no mark and goes on." },
        .. _before is null ? Array.Empty<KeyDeed>() : [new KeyDeed("Enter", "rest as before", AsBeforeAsync) { Explained = "Gives this aspect and those after it the marks of the sheet graded before, writes them, and brings the next sheet." }],
        new("Backspace", "step back", StepBackAsync) { Explained = "Goes back to the aspect before, or to the sheet before." },
        KeyDeed.Doing("Down", "next aspect", () => _hand.Ask(_hand.Asked + 1)),
        KeyDeed.Doing("Up", "aspect before", () => _hand.Ask(_hand.Asked - 1)),
        new("Right", "next sheet", () => GoAsync(1)),
        new("Left", "sheet before", () => GoAsync(-1)),
    ];

    public override bool Moves(string key, int height)
    {
        if (IsThrough && key is "Left" or "Backspace")
        {
            _at = Math.Max(0, _pile.Count - 1);
            _hand.Begin();

            return true;
        }

        return base.Moves(key, height);
    }

    private async Task<Opening?> GiveAsync(int? mark)
    {
        _hand.Give(mark);

        if (!_hand.IsLast)
        {
            _hand.Ask(_hand.Asked + 1);

            return null;
        }

        return await GoAsync(1);
    }

    private async Task<Opening?> AsBeforeAsync()
    {
        foreach (var aspect in GradeAspect.All.Skip(_hand.Asked))
        {
            _hand.Give(aspect, aspect.MarkOf(_before));
        }

        return await GoAsync(1);
    }

    private async Task<Opening?> StepBackAsync()
    {
        if (_hand.IsFirst)
        {
            return await GoAsync(-1);
        }

        _hand.Ask(_hand.Asked - 1);

        return null;
    }

    private async Task<Opening?> GoAsync(int step)
    {
        await WriteAsync();
        _at = Math.Clamp(_at + step, 0, _pile.Count);
        _hand.Begin();

        return null;
    }

    /// <summary>Writes what was given of this sheet. A refusal leaves the marks in the hand.</summary>
    private async Task WriteAsync()
    {
        if (IsThrough)
        {
            return;
        }

        var sheet = Here;

        if (_hand.Taken(sheet, _against) is { } grade)
        {
            GradesAsSeen seen = new([sheet]);
            Show(await desk.Store.Do(register =>
            {
                register.GradeSheets.Run(ImpressionChoice.OfCode(sheet.ShownCode), grade, seen);

                return register.LookAround.Work(work);
            }));
            desk.Say(SortingSaid.Graded(1, grade), Tone.Good);
            desk.Undo = new Undoing($"the grade of sheet {Counted.Figure(sheet.Ordinal)}", () => GradeBackAsync(sheet));
        }

        _before = _pile.FirstOrDefault(one => one.Id == sheet.Id)?.Grade ?? _before;
    }

    private async Task<string> GradeBackAsync(Impression sheet)
    {
        GradeGiven before = new()
        {
            Marks = GradeAspect.All.Where(aspect => aspect.MarkOf(sheet.Grade) is not null).ToDictionary(aspect => aspect, aspect => aspect.MarkOf(sheet.Grade)!.Value),
            NotLooked = [.. GradeAspect.All.Where(aspect => aspect.MarkOf(sheet.Grade) is null)],
            Against = sheet.Grade?.Against ?? "unknown",
            Graded = sheet.Grade?.Graded,
        };
        await desk.Store.Do(register => register.GradeSheets.Run(ImpressionChoice.OfCode(sheet.ShownCode), before));
        _at = Math.Max(0, _pile.ToList().FindIndex(one => one.Id == sheet.Id));
        _hand.Begin();

        return $"Sheet {Counted.Figure(sheet.Ordinal)} is graded as it was before.";
    }

    private Choice Against() => new("What are the sheets held against?",
    [
        Choosable.Opens("g", "the guide sheet", () => Held("guide-sheet")),
        Choosable.Opens("b", "the bon à tirer", () => Held("bon-a-tirer")),
        Choosable.Opens("n", "neither, or not known", () => Held("unknown")),
    ]);

    private Opening? Held(string against)
    {
        _against = against;

        return null;
    }

    private void Show(Work found)
    {
        _work = found;
        var here = found.Runs.FirstOrDefault(one => one.Ordinal == run);
        _pile = here is null ? [] : [.. found.Impressions.Where(sheet => sheet.Run == here.Id && sheet.Standing != "left-out").OrderBy(sheet => sheet.Ordinal)];
    }
}
