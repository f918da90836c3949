using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Shows;

namespace EditionRegister.Tui.Shows;

/// <summary>One show: what is recorded of it, and the sheets on its list in list order.</summary>
internal sealed class ShowPage(Desk desk, long show) : ListPage
{
    private static readonly ListColumn[] Columns =
        [new("title", 16, Stretch: 2), new("maker", 14, Stretch: 1), new("number", 9), new("price", 10, IsRight: true), new("where it is", 14, Stretch: 2)];

    private ShowSeen? _seen;
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => _seen?.Show.ShownName ?? "Show";

    public override string Explains =>
        "The show, and the sheets on its list in the order in which they were listed. a puts sheets on the list, x takes them off; Space marks several. "
        + "A sheet on the list stays where it is and whose it is, and one that is sold or away may hang as well. Pupils are called here as they are to be called in public.";

    public override Listing Rows => _rows;

    public override string Empty => "No sheet is on the list yet. Press a to list some.";

    public override IReadOnlyList<KeyDeed> Keys => _seen is not { } seen ? [] :
    [
        .. Here is { } here ? [KeyDeed.Opens("Enter", "open the sheet", () => new ImpressionPage(desk, here)), KeyDeed.Doing("Space", desk.Marked.Holds(here) ? "unmark" : "mark", () => desk.Marked.Turn(here))] : (KeyDeed[])[],
        KeyDeed.Opens("a", "add sheets", () => WhichSheets.Ask(desk, $"Which sheets are listed for “{seen.Show.ShownName}”?", picked => ShowLists.AddAsync(desk, show, picked))),
        .. Here is null ? [] : OfTheList(seen),
        new("e", "edit the show", async () => ShowForm.Edit(desk, await ShowKnown.ReadAsync(desk), seen)),
        .. MarkedElsewhere > 0 || MarkedHere.Count > 0 ? [KeyDeed.Doing("z", "clear marks", desk.Marked.Clear) with { Explained = "Takes every mark away, here and elsewhere." }] : (KeyDeed[])[],
    ];

    private string? Here => _seen is { Listed.Count: > 0 } seen ? seen.Listed[Current].Impression.ShownCode : null;

    private IReadOnlyList<string> Codes => [.. _seen?.Listed.Select(listed => listed.Impression.ShownCode) ?? []];

    private IReadOnlyList<string> MarkedHere => [.. Codes.Where(desk.Marked.Holds)];

    private int MarkedElsewhere => desk.Marked.Count - MarkedHere.Count;

    public override IReadOnlyList<Line> Head(int width) => _seen is { } seen ? ShowHead.Of(seen, width) : [];

    public override IReadOnlyList<Line> Foot(int width) =>
    [
        .. desk.Marked.Count > 0 ? [Line.Of($"{Counted.Figure(MarkedHere.Count)} marked here{(MarkedElsewhere > 0 ? $", {Counted.Figure(MarkedElsewhere)} elsewhere" : "")}", Tone.Quiet)] : (Line[])[],
        .. _seen is { } seen && seen.Listed.Any(listed => listed.Work.Makers.Any(maker => maker.IsProtected)) ? Wrap.Of(ShowForm.Caution, width).Select(line => Line.Of(line, Tone.Warning)) : [],
    ];

    public override async Task RefreshAsync()
    {
        try
        {
            _seen = await desk.Store.Do(register => register.LookAround.Show(show));
        }
        catch (RefusedException)
        {
            (_seen, _rows) = (null, new(Columns, 0, _ => []));
            throw;
        }

        _rows = new Listing(Columns, _seen.Listed.Count, row => Cells(_seen.Listed[row])) { IsMarked = row => desk.Marked.Holds(_seen.Listed[row].Impression.ShownCode) };
    }

    private IEnumerable<KeyDeed> OfTheList(ShowSeen seen)
    {
        yield return new KeyDeed("x", MarkedHere.Count > 0 ? "take marked off" : "take off the list", TakeOffAsync) { Explained = "Takes the marked sheets off the list, or this one where none is marked. The logbook keeps that they were on it." };
        yield return KeyDeed.Opens("d", "documents", () => PaperForms.Of(desk, OfTheShow, Called(seen))) with { Explained = "Certificates, labels and lists of all sheets on the list." };
        yield return new KeyDeed("v", "inventory", () => PaperForms.PreviewAsync(desk, "i", OfTheShow, Called(seen), Codes)) { Explained = "Shows the list as an inventory, to be looked at and written as CSV." };
    }

    private ImpressionChoice OfTheShow => new() { Show = show };

    private static string Called(ShowSeen seen) => $"the list of “{seen.Show.ShownName}”";

    private async Task<Opening?> TakeOffAsync()
    {
        var codes = MarkedHere is { Count: > 0 } marked ? marked : [Here!];
        var saved = await ShowLists.RemoveAsync(desk, show, codes);
        desk.Say(saved.Sentence, Tone.Good);
        desk.Undo = saved.Undo;
        await RefreshAsync();

        return null;
    }

    private static string[] Cells(ImpressionListed listed)
    {
        var (work, sheet) = listed;

        return
        [
            work.ShownTitle,
            work.Makers.Any() ? string.Join(", ", work.Makers.Select(maker => maker.CreditText)) : work.ShownMaker,
            work.NumberOf(sheet),
            PricesShown.Show(sheet.Asking, sheet.AskingCurrency) ?? "",
            Where(work, sheet),
        ];
    }

    private static string Where(Work work, Impression sheet) => sheet.Where switch
    {
        // The innermost place first, so that a narrow column still says which drawer.
        { State: "placed", Place: { } place } => string.Join(", ", Places.Split(work.Book.PathOf(place)).Reverse()),

        // A pupil who has their print at home is called as on the label beside it.
        { State: "with", Holder: { } holder } when work.Book.Person(holder) is { IsProtected: true } pupil => $"with {pupil.PublicText}",
        _ => WhereInWords.Of(work, sheet),
    };
}
