using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Stock;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Stock;

/// <summary>
/// Where codes are scanned, one after another: letters and digits are what is scanned, Enter takes them, and what came of each is said at once.
/// Nothing is recorded before F2.
/// </summary>
internal abstract class ScanPage(Desk desk) : ListPage
{
    private const int Longest = 300;

    private static readonly ListColumn[] Columns = [new("came to", 11), new("code", 9), new("what", 28, Stretch: 1), new("the register says", 20, Stretch: 1)];

    private readonly List<Scan> _scans = [];
    private readonly OrderedDictionary<string, StockNamed> _expected = new(StringComparer.Ordinal);
    private string _typed = "";
    private bool _showsMissing;

    public override bool IsTyping => true;

    public override string Empty => _showsMissing ? "Everything was found." : "Nothing scanned yet.";

    public override Listing Rows => _showsMissing
        ? Listing.Of(Columns, Missing, named => ["to find", named.Code, named.Called, Where(named)])
        : new Listing(Columns, _scans.Count, row => Cells(_scans[^(row + 1)])) { ToneOf = row => _scans[^(row + 1)].Tone };

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        new("Enter", "take the code", TakeAsync) { Explained = "Takes the code that was typed or scanned, and says what came of it. A scanner presses it by itself." },
        KeyDeed.Doing("Delete", "undo the last", UndoLast) with { Explained = "Takes the last scan back, as if it had not been." },
        KeyDeed.Doing("Tab", _showsMissing ? "what was scanned" : "what is to find", Turn) with { Explained = "Turns between what was scanned, the latest first, and what has not been found yet." },
        KeyDeed.Opens("F2", "record it", FinishOrSay) with { Explained = FinishExplained },
        KeyDeed.Opens("F3", "codes from a file", () => ScanFileForm.Of(desk, this)) with { Explained = "Reads codes from a text file, one in each line, as scanners with a memory write it." },
        KeyDeed.Opens("Esc", "leave", Leave) with { Explained = "Leaves without recording anything; what was scanned is forgotten, and it asks before." },
    ];

    protected Desk Desk => desk;

    protected abstract string FinishExplained { get; }

    /// <summary>In the head: what is counted.</summary>
    protected abstract string Counted { get; }

    /// <summary>As the counts call what was looked for and is there: present, handed over, back.</summary>
    protected abstract string PresentWord { get; }

    /// <summary>The way to the place that is counted, or null where none is.</summary>
    protected virtual string? Path => null;

    /// <summary>What was scanned, for the register.</summary>
    protected ScanList Scans => ScanList.OfTyped(string.Join(',', _scans.Select(scan => scan.Code)));

    private List<StockNamed> Missing => [.. _expected.Where(pair => _scans.TrueForAll(scan => scan.Named?.Thing.Code != pair.Key)).Select(pair => pair.Value)];

    /// <summary>What is asked before it is recorded.</summary>
    protected abstract Opening Finish();

    /// <summary>True where it may be recorded without any code.</summary>
    protected virtual bool MayBeEmpty => false;

    public override IReadOnlyList<Line> Head(int width) =>
    [
        .. Wrap.Of(Counted, width).Take(2).Select(line => Line.Of(line, Tone.Strong)),
        Line.Of(Counts, Tone.Strong),
        Line.Of("Scan or type a code, then Enter: ", Tone.Key).Then(_typed + "_", Tone.Strong),
    ];

    public override bool Moves(string key, int height)
    {
        var letter = key == "Space" ? " " : key;

        if (key == "Backspace")
        {
            _typed = _typed.Length > 0 ? _typed[..^1] : "";
            return true;
        }

        if (KeyNames.IsLetter(letter))
        {
            _typed = _typed.Length < Longest ? _typed + letter : _typed;
            return true;
        }

        // A key of the page's own is no moving about; Home, End and the arrows are.
        return key is "Up" or "Down" or "PageUp" or "PageDown" or "Home" or "End" && base.Moves(key, height);
    }

    /// <summary>Takes codes that were read elsewhere; answers how many of them were new here.</summary>
    public async Task<int> AddAsync(IEnumerable<RegisterCode> codes)
    {
        var before = _scans.Count;

        foreach (var code in codes.Where(code => _scans.TrueForAll(scan => scan.Code != code.ToString())))
        {
            await AddAsync(code);
        }

        return _scans.Count - before;
    }

    /// <summary>What should be there.</summary>
    protected void Expect(IEnumerable<StockNamed> things)
    {
        _expected.Clear();

        foreach (var thing in things)
        {
            _expected.TryAdd(thing.Thing.Code, thing);
        }
    }

    private string Counts
    {
        get
        {
            var (present, missing) = (_scans.Count(scan => scan.Outcome == StockOutcome.Present), Missing.Count);
            var (strangers, others) = (_scans.Count(scan => scan.Outcome == StockOutcome.Stranger), _scans.Count(scan => scan.Outcome == StockOutcome.NotOurs));

            return $"{Figure(present)} of {Figure(_expected.Count)} {PresentWord}   {Figure(missing)} to find   {Figure(strangers)} {(strangers == 1 ? "stranger" : "strangers")}{(others > 0 ? $"   {Figure(others)} not ours" : "")}";
        }
    }

    private async Task<Opening?> TakeAsync()
    {
        var read = ScannedCode.Read(_typed);
        _typed = "";

        if (read.Text.Length == 0)
        {
            desk.Say("Scan or type a code first; F2 records what was scanned.", Tone.Quiet);
        }
        else if (read.Code is not { } code)
        {
            desk.Say($"“{read.Text}” was not taken: {read.Problem}. Look at the label and scan it again.", Tone.Bad);
        }
        else if (_scans.FirstOrDefault(scan => scan.Code == code.ToString()) is { } before)
        {
            desk.Say($"{code} was scanned before: {before.What}. It counts once.", Tone.Warning);
        }
        else
        {
            var scan = await AddAsync(code);
            desk.Say($"{Word(scan.Outcome)}: {scan.Code}, {scan.What}{(scan.Outcome == StockOutcome.Stranger ? $"; the register has it {scan.Named!.Where}" : "")}.", scan.Tone);
        }

        (_showsMissing, Current) = (false, 0);

        return null;
    }

    private async Task<Scan> AddAsync(RegisterCode code)
    {
        var named = _expected.TryGetValue(code.Text, out var known) ? known : await desk.Store.Do(register => register.LookAround.StockOf(code));
        Scan scan = new(code.ToString(), StockComparison.OutcomeOf(named?.Thing, known is not null), named);
        _scans.Add(scan);

        return scan;
    }

    private void UndoLast()
    {
        if (_scans.Count == 0)
        {
            desk.Say("Nothing was scanned yet.", Tone.Quiet);
            return;
        }

        desk.Say($"Taken back: {_scans[^1].Code}, {_scans[^1].What}.", Tone.Quiet);
        _scans.RemoveAt(_scans.Count - 1);
        Current = 0;
    }

    private void Turn()
    {
        _showsMissing = !_showsMissing;
        Current = 0;
    }

    private Opening? FinishOrSay()
    {
        if (_scans.Count > 0 || (MayBeEmpty && _expected.Count > 0))
        {
            return Finish();
        }

        desk.Say("Nothing was scanned yet, so there is nothing to record.", Tone.Warning);

        return null;
    }

    private Opening Leave() => _scans.Count == 0
        ? Back.Once
        : new Question($"Leave without recording? {UseCases.Wording.Counted.Of(_scans.Count, "scan")} will be forgotten.",
        [
            new Answer("l", "leave", () => Task.FromResult<Opening?>(Back.Once)),
            new Answer("n", "stay here", () => Task.FromResult<Opening?>(null)),
        ]);

    private string[] Cells(Scan scan) => [Word(scan.Outcome), scan.Code, scan.What, scan.Named is { } named ? Where(named) : ""];

    private string Word(string outcome) => outcome == StockOutcome.Present ? PresentWord : StockShown.Outcome(outcome);

    /// <summary>Of what lies in the place that is counted only the rest of the way.</summary>
    private string Where(StockNamed named) =>
        Path is not { } path || !named.Where.StartsWith($"in {path}", StringComparison.Ordinal) ? named.Where
        : named.Where.Length == path.Length + 3 ? "here"
        : named.Where[(path.Length + 3)..] is var rest && rest.StartsWith(Domain.People.AddressBook.Inside, StringComparison.Ordinal) ? $"in {rest[Domain.People.AddressBook.Inside.Length..]}"
        : named.Where;

    private static string Figure(int count) => UseCases.Wording.Counted.Figure(count);
}
