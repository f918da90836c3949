using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Tui.Stock;

/// <summary>Counting what lies in a place, code by code.</summary>
/// <param name="desk">The desk.</param>
/// <param name="place">The place.</param>
/// <param name="alone">Without the places inside it.</param>
internal sealed class StockCountPage(Desk desk, long place, bool alone) : ScanPage(desk)
{
    private const string Date = "Date";
    private const string By = "Counted by";
    private const string Note = "Note";

    private StockToCount? _count;

    public override string Title => "Counting";

    public override string Explains =>
        "Take everything out of the drawer in your hand once, and scan the label of each folder, or type its code and press Enter. Each code is answered at once: present, "
        + "a stranger that the register has elsewhere, or not ours. What is not scanned in the end is missing. A scanner that types a code and Enter works as it is; so does the link of a QR code. "
        + "Nothing is recorded before F2, and what the register says of the sheets changes only when you accept it afterwards.";

    protected override string FinishExplained => "Records what was scanned, and what is missing; what the register says of the sheets stays as it is.";

    protected override string Counted => _count is null ? "" : $"{_count.Path}{(alone ? ", without the places inside it" : "")}";

    protected override string PresentWord => "present";

    protected override string? Path => _count?.Path;

    protected override bool MayBeEmpty => true;

    public override async Task RefreshAsync()
    {
        _count = await Desk.Store.Do(register => register.LookAround.StockToCount(place, alone));
        Expect(_count.Things);
    }

    protected override Opening Finish() => new Form(
        "Record the stock-take",
        [Fields.Today(Date, Desk.Today), new Field(By) { Form = "who counted: a name of the address book; empty where nobody says" }, new Field(Note) { Form = "anything else" }],
        SaveAsync)
    {
        About = ["What is missing and what is strange is proposed to be put right on the next page."],
        OwnEachTime = [Date, Note],
    };

    private async Task<Saved> SaveAsync(Form form)
    {
        StockToTake wanted = new()
        {
            Place = _count!.Path,
            Alone = alone,
            Date = Fields.DateOf(form[Date]),
            Person = form[By],
            Note = form[Note],
            IsEmpty = true,
        };
        var seen = await Desk.Store.Do(register => register.LookAround.StockTake(register.TakeStock.Run(wanted, Scans)));

        return new Saved(StockSaid.Recorded(seen), new Back(new StockTakePage(Desk, seen.Take.Id)));
    }
}
