using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked of a sale; a certificate and labels come with it where they are wanted.</summary>
internal static class SellForm
{
    private const string Buyer = "Buyer";
    private const string Standing = "Buyer is";
    private const string Price = "Price";
    private const string Currency = "Currency";
    private const string Net = "Net";
    private const string Collected = "Collected";
    private const string Date = "Date";
    private const string Agent = "Sold through";
    private const string Seller = "Seller";
    private const string Despite = "Despite reservation";
    private const string Note = "Note";

    public static async Task<Opening?> OfAsync(Desk desk, SheetsAtHand sheets)
    {
        var labelSheets = await SalePapers.LabelSheetsAsync(desk);
        var buyer = Known.Person(Buyer, sheets, "who bought: Inés Vargøy");
        var isNew = Newcomer.Field(Standing, buyer, mayBeUnknown: true);
        var currency = MoneyFields.Currency(Currency, sheets.Same(sheet => sheet.AskingCurrency).Value ?? sheets.Settings.Currency);
        var asking = sheets.Same(sheet => (sheet.Asking, sheet.AskingCurrency));

        return new Form(
            $"Sell {sheets.Called}",
            [
                buyer,
                isNew,
                MoneyFields.Amount(Price, currency, sheets.IsOne ? "what the buyer paid" : "what the buyer paid for each", PricesShown.Amount(asking.Value.Asking, asking.Value.AskingCurrency) ?? ""),
                currency,
                Field.YesNo(Collected, true),
                Fields.Today(Date, desk.Today),
                .. SalePapers.Fields(labelSheets),
                MoneyFields.Amount(Net, currency, "what the owner receives; empty where the consignee's share says so"),
                Known.Person(Agent, sheets, "who sold for the owner; empty is the consignee who has it, or nobody"),
                Known.Person(Seller, sheets, "the owner who sells; empty is the maker"),
                .. IsKept(sheets) ? [Field.YesNo(Despite, false)] : (Field[])[],
                new Field(Note) { Form = "anything else" },
            ],
            form => Newcomer.ThenAsync(desk, form, buyer, isNew, () => SaveAsync(desk, sheets, form)))
        {
            Name = "sell",
            About = [sheets.About, .. Kept(sheets)],
            OwnEachTime = [Buyer, Standing, Price, Net, Seller, Note, SalePapers.FirstLabel],
            Caution = "Tax, resale right and what a certificate has to disclose are decided by local law and are yours to see to; ask licensed advice where in doubt.",
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        SalePeople people = new(form[Buyer], form[Seller], form[Agent]);
        var sale = SaleOf(desk, form);
        var (count, name, meant) = await desk.Store.Do(register =>
        {
            var done = register.SellImpressions.Sell(sheets.ByCode, people, sale);

            return (done, people.Buyer is { } who ? Names.Of(register, who) : null, LastStep.Of(register, sheets));
        });
        var papers = await SalePapers.WriteAsync(desk, sheets, form);

        return new Saved(string.Join(' ', papers.Prepend(SheetSaid.Sold(count.Count, name, sale.Price, sale.Currency, sale.Date, count.Resold > 0))))
        {
            Undo = LastStep.Undoing(desk, "the sale", sheets, meant, move: sale.Collected, transfer: true),
        };
    }

    /// <summary>Reserved, or on approval: somebody else may have the first word.</summary>
    private static bool IsKept(SheetsAtHand sheets) => sheets.Sheets.Any(sheet => sheet.StandingReservation is not null || sheet.Whereabouts is [.., { Kind: "on-approval" }]);

    private static IEnumerable<string> Kept(SheetsAtHand sheets) =>
        sheets.Pairs.Where(pair => pair.Sheet.StandingReservation is not null).Take(1).Select(pair => $"{pair.Sheet.ShownCode} is reserved {MovesSaid.ReservedOf(pair.Sheet.StandingReservation, pair.Work.Book)}.");

    private static Sale SaleOf(Desk desk, Form form)
    {
        var currency = form.FieldOf(Currency);

        return new Sale
        {
            Date = DayOf.Deed(desk, form[Date]),
            Price = MoneyFields.MinorUnits(form[Price], currency),
            Net = MoneyFields.MinorUnits(form[Net], currency),
            Currency = MoneyFields.Of(currency),
            Collected = form.IsYes(Collected),
            DespiteReservation = SendForm.Answer(form, Despite) == "yes",
            Note = form[Note],
        };
    }
}
