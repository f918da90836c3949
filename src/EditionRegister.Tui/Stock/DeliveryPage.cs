using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Stock;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Tui.Stock;

/// <summary>Handing sheets over code by code: what is scanned goes, what is not stays.</summary>
internal sealed class DeliveryPage(Desk desk, SheetsAtHand sheets) : ScanPage(desk)
{
    private const string To = "To whom";
    private const string As = "They are";
    private const string From = "Out of";
    private const string Until = "Until";
    private const string Share = "Their share";
    private const string Strangers = "Strangers go too";
    private const string Date = "Date";
    private const string Note = "Note";

    private static readonly MoveKind[] Kinds = [MoveKind.Consigned, MoveKind.Lent, MoveKind.Exhibited];

    public override string Title => "Handing over";

    public override string Explains =>
        "Scan or type the code of each sheet as you hand it over. What was to go is handed over; a stranger was not to go, and goes only where you say so; what is not scanned stays where it is. "
        + "Nothing is recorded before F2, which asks to whom and on what terms.";

    protected override string FinishExplained => "Asks to whom and on what terms, and records what was handed over.";

    protected override string Counted => $"{sheets.Called} to hand over";

    protected override string PresentWord => "handed over";

    public override Task RefreshAsync()
    {
        Expect(sheets.Pairs.Select(pair => new StockNamed(
            new StockThing(pair.Work.Id, pair.Sheet.Code, pair.Sheet.Id, null),
            RegisterCode.TryParse(pair.Sheet.Code, out var code) ? code.ToString() : pair.Sheet.Code,
            $"{Called.Work(pair.Work)} {pair.Work.NumberOf(pair.Sheet)}",
            WhereInWords.Of(pair.Work, pair.Sheet))));

        return Task.CompletedTask;
    }

    protected override Opening Finish()
    {
        var place = sheets.Sheets.Select(sheet => sheet.Where?.Place).Distinct().Take(2).ToList() is [{ } one] ? sheets.Book.PathOf(one) : "";

        return new Form(
            "Record what was handed over",
            [
                Known.Person(To, sheets, "a name of the address book: Quay Gallery", isNeeded: true),
                Field.OneOf(As, [.. Kinds.Select(kind => kind.Word)]),
                Known.Place(From, sheets, isNeeded: true, place),
                Fields.Date(Until),
                Fields.Share(Share),
                Field.YesNo(Strangers, given: false),
                Fields.Today(Date, Desk.Today),
                new Field(Note) { Form = "anything else" },
            ],
            SaveAsync)
        {
            OwnEachTime = [From, Date, Note],
            Caution = "What a consignment or loan agreement has to say is decided by local law, which differs from place to place; ask licensed advice where in doubt.",
        };
    }

    private async Task<Saved> SaveAsync(Form form)
    {
        SheetsToDeliver wanted = new()
        {
            Place = form[From]!,
            Going = sheets.ByCode,
            To = form[To]!,
            As = MoveKind.Of(form[As]!)!,
            Date = DayOf.Deed(Desk, form[Date]),
            Until = Fields.DateOf(form[Until]) ?? RecordedDate.None,
            Rate = Fields.Hundredth(form[Share]),
            StrangersGo = form.IsYes(Strangers),
            Note = form[Note],
        };
        var seen = await Desk.Store.Do(register => register.LookAround.StockTake(register.DeliverSheets.Run(wanted, Scans)));

        return new Saved(StockSaid.Recorded(seen), new Back(new StockTakePage(Desk, seen.Take.Id)));
    }
}
