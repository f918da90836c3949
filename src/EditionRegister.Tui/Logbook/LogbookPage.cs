using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Logbook;

/// <summary>The logbook, newest first, and whether it is whole.</summary>
internal sealed class LogbookPage : ListPage
{
    private static readonly ListColumn[] Columns = [new("entry", 7, IsRight: true), new("when (UTC)", 16), new("done", 16, Stretch: 2), new("about", 14, Stretch: 3)];

    private static readonly ListColumn[] ColumnsWithWho = [.. Columns[..2], new("who", 10), .. Columns[2..]];

    private readonly Desk _desk;
    private readonly Proving _proving;
    private Narrowing _narrowing = Narrowing.None;
    private EntryBlocks _blocks;
    private long _all;
    private bool _namesSomeone;

    public LogbookPage(Desk desk)
    {
        _desk = desk;
        _proving = new Proving(desk);
        _blocks = new EntryBlocks(desk, new LogbookWanted(), 0);
    }

    public override string Title => "Logbook";

    public override string Explains =>
        "Everything that was ever recorded here stands in the logbook, in the order in which it was recorded. Nothing in it is changed or taken out again: what was put right has an entry of its own. "
        + "Each entry carries a hash, and the head is the hash of all entries together. The program recomputes them when you come here, so you see at the top whether anything was changed behind its back. "
        + "A certificate prints the head as it was when it was issued: open that entry with Enter to compare them.";

    public override Listing Rows => new(NamesSomeone ? ColumnsWithWho : Columns, _blocks.Count, Cells) { HasMore = _blocks.HasMore };

    public override string Empty => _all == 0 ? "The logbook has no entries." : "No entry is found so. Press a to see all again.";

    public override string? FindsIn => "title, maker, name, place";

    public override IReadOnlyList<KeyDeed> Keys => [.. KeysOfEntry(), .. KeysOfList()];

    /// <summary>What is being read, and recomputed, beside the page.</summary>
    public Task Underway => Task.WhenAll(_blocks.Reading, _proving.Underway);

    public override IReadOnlyList<Line> Head(int width) =>
    [
        .. ProofInWords.Of(_proving, _all, width),
        .. _narrowing == Narrowing.None ? [] : new[] { Line.Of("Only ", Tone.Quiet).Then(_narrowing.InWords(), Tone.Strong).Then("   a shows all", Tone.Quiet) },
    ];

    public override async Task RefreshAsync()
    {
        var all = await _desk.Store.Do(register => register.LookAround.Head().N);

        if (all != _all)
        {
            // The entry looked at stays the one looked at, unless it was the newest.
            Current += Current > 0 && IsWhole ? (int)(all - _all) : 0;
            _all = all;
            Begin();
        }

        await _blocks.ReadAsync(IsWhole ? Current : 0);
        _proving.BeginIfGrown(all);
    }

    protected override void Filtered()
    {
        Begin();
        _blocks.Ask(0);
    }

    // Where nobody is ever named, nobody has a column; once it is there it stays.
    private bool NamesSomeone => _namesSomeone |= _blocks.NamesSomeone;

    private bool IsWhole => _narrowing == Narrowing.None && string.IsNullOrWhiteSpace(Filter);

    private EntryFound Here => Rows.Count == 0 ? EntryFound.NotYet : _blocks.At(Current);

    private void Begin()
    {
        _blocks.Drop();
        _blocks = new EntryBlocks(_desk, _narrowing.Wanted(Filter), _all);
    }

    private void NarrowTo(Narrowing narrowing)
    {
        _narrowing = narrowing;
        FilterBy(Filter);
    }

    private IReadOnlyList<string> Cells(int row) => _blocks.At(row) switch
    {
        { IsRead: false } => Cells("…", "…", "…", "…", "…"),
        { Entry: { } entry } => Cells(Counted.Figure(entry.N), Moment(entry.At), entry.ByName ?? "", entry.DeedInWords, entry.Subject),
        _ => Cells(Counted.Figure(_all - row), "", "", "missing", "the logbook has no such entry"),
    };

    private IReadOnlyList<string> Cells(string n, string when, string who, string done, string about) => NamesSomeone ? [n, when, who, done, about] : [n, when, done, about];

    private static string Moment(string at) => at.Length >= 16 ? at[..16].Replace('T', ' ') : at;

    private IEnumerable<KeyDeed> KeysOfEntry()
    {
        if (Here is not { Entry: { } entry } here)
        {
            yield break;
        }

        yield return KeyDeed.Opens("Enter", "read it whole", () => new EntryPage(_desk, entry.N)) with
        {
            Explained = "Opens the entry whole: every fact it sets, the others of its batch, its leaf and head.",
        };

        if (ThingOfEntry.Key(_desk, entry.Root) is { } go)
        {
            yield return go;
        }

        if (_narrowing.Root is null)
        {
            yield return KeyDeed.Doing("o", "only about this", () => NarrowTo(_narrowing with { Root = entry.Root, RootCalled = entry.Subject })) with
            {
                Explained = "Shows only the entries that are about the same thing: the history of one work, person or place.",
            };
        }

        if (here.IsReadInStanding)
        {
            yield return BatchUndoing.Key(_desk, entry.N);
        }
    }

    private IEnumerable<KeyDeed> KeysOfList()
    {
        yield return new KeyDeed("f", "look for entries", async () => await NarrowForm.OpenAsync(_desk, _narrowing, NarrowTo)) { Explained = "Asks for days, a person and words, and shows only the entries that fit all of them." };

        if (IsWhole)
        {
            yield return KeyDeed.Opens("d", "go to a day", () => DayForm.Open(GoToAsync)) with { Explained = "Asks for a day and goes to the last entry of it, or the nearest before." };
        }
        else
        {
            yield return KeyDeed.Doing("a", "show all again", ShowAll);
        }

        yield return KeyDeed.Doing("c", "check again", () => _proving.Begin(_all)) with { Explained = "Recomputes every hash of the logbook once more, from the first entry on." };
    }

    private void ShowAll()
    {
        _narrowing = Narrowing.None;
        FilterBy("");
    }

    private async Task<string> GoToAsync(DateOnly day)
    {
        var seen = await _desk.Store.Do(register => register.LookAround.LogbookPage(new LogbookWanted { Before = _all + 1, To = day, Take = 1 }));

        if (seen.Page is not [var entry])
        {
            Current = Rows.Count - 1;
            return $"Nothing was recorded up to {RecordedDay(day)}; this is the first entry.";
        }

        Current = (int)(_all - entry.N);
        return $"Entry {Counted.Figure(entry.N)} was the last up to {RecordedDay(day)}.";
    }

    private static string RecordedDay(DateOnly day) => Domain.Dates.RecordedDate.On(day).ToString();
}
