using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Tui.Stock;

/// <summary>Counting what came back from someone against what is out with them.</summary>
internal sealed class ReceivingPage(Desk desk, StockAway away, string path) : ScanPage(desk)
{
    private const string From = "From whom";
    private const string Date = "Date";
    private const string Note = "Note";

    public override string Title => "Came back";

    public override string Explains =>
        "Scan or type the code of each sheet that came back. What was awaited is back; a stranger came without being awaited; what is not scanned is still out. "
        + "Nothing is recorded before F2. Look at each sheet as you take it out, and examine it with x on its page where something is not as it was.";

    protected override string FinishExplained => "Records what came back and puts it away here; what was not scanned is still out.";

    protected override string Counted => $"Back from {away.Name}, into {path}";

    protected override string PresentWord => "back";

    /// <summary>Asks from whom, and opens the count.</summary>
    public static async Task<Opening?> AskAsync(Desk desk, long place)
    {
        var (known, path) = await desk.Store.Do(register => (register.LookAround.Suggestions(), register.LookAround.Book().PathOf(place)));

        return new Form("What came back", [Fields.Known(From, known.People, "who had it: a gallery, a museum, a friend")], async form =>
        {
            var found = await desk.Store.Do(register => register.LookAround.StockAwayWith(form[From] ?? ""));

            return new Saved($"{UseCases.Wording.Counted.Sheets(found.Things.Count)} {(found.Things.Count == 1 ? "is" : "are")} out with {found.Name}.", new ReceivingPage(desk, found, path));
        });
    }

    public override Task RefreshAsync()
    {
        Expect(away.Things);

        return Task.CompletedTask;
    }

    protected override Opening Finish() => new Form("Record what came back", [Fields.Today(Date, Desk.Today), new Field(Note) { Form = "anything else" }], async form =>
    {
        SheetsToReceive wanted = new() { Place = path, From = UseCases.Wording.Counted.Figure(away.Person), Date = Fields.DateOf(form[Date]), Note = form[Note] };
        var seen = await Desk.Store.Do(register => register.LookAround.StockTake(register.ReceiveSheets.Run(wanted, Scans)));

        return new Saved(StockSaid.Recorded(seen), new Back(new StockTakePage(Desk, seen.Take.Id)));
    })
    {
        OwnEachTime = [Date, Note],
    };
}
