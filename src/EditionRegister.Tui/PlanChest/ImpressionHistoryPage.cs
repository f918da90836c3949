using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Logbook;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Every entry of the logbook about the work a sheet is of, newest first.</summary>
internal sealed class ImpressionHistoryPage(Desk desk, Work work, Impression sheet) : ListPage
{
    private const int Most = 1_000;

    private static readonly ListColumn[] Columns = [new("entry", 7, IsRight: true), new("when (UTC)", 16), new("done", 30, Stretch: 1)];

    private IReadOnlyList<EntryListed> _entries = [];

    public override string Title => $"history of {Called.Work(work)}";

    public override string Explains =>
        "Every entry of the logbook about this work and its sheets, newest first. Entries are never changed; what was mistyped is put right by a later one. Enter opens one with every fact it sets. With e a step of where this sheet was, or whose, is put right.";

    public override Listing Rows => Listing.Of(Columns, _entries, entry => [Counted.Figure(entry.N), ImpressionText.Minute(entry.At), entry.DeedInWords]);

    public override string Empty => "No entry is about this work.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. _entries.Count == 0 ? [] : (KeyDeed[])[KeyDeed.Opens("Enter", "open the entry", () => new EntryPage(desk, _entries[Current].N))],
        new KeyDeed("e", "put a step right", () => AmendChoice.OfAsync(desk, sheet.ShownCode)) { Explained = "Puts a step of where this sheet was or whose it was right, puts one in that was learned of late, or takes one out that never was; the logbook keeps both." },
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override async Task RefreshAsync() =>
        _entries = (await desk.Store.Do(register => register.LookAround.LogbookPage(new LogbookWanted { Root = Domain.Facts.Root.Work(work.Id).ToString(), Take = Most }))).Page;
}
