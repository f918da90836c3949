using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when a buyer gives sheets back.</summary>
internal static class BuyersReturnForm
{
    private const string Refund = "Given back";
    private const string Currency = "Currency";
    private const string Here = "Came along";
    private const string Place = "Place";
    private const string Date = "Date";
    private const string Note = "Note";

    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var last = sheets.Same(sheet => (sheet.Ownership[^1].Price, sheet.Ownership[^1].Currency)).Value;
        var currency = MoneyFields.Currency(Currency, last.Currency ?? sheets.Settings.Currency);

        return new Form(
            $"Take {sheets.Called} back from the buyer",
            [
                MoneyFields.Amount(Refund, currency, sheets.IsOne ? "the money, if any" : "the money for each, if any", PricesShown.Amount(last.Price, last.Currency) ?? ""),
                currency,
                Field.YesNo(Here, true),
                Known.Place(Place, sheets, isNeeded: false),
                Fields.Today(Date, desk.Today),
                new Field(Note) { Form = "why, and anything else" },
            ],
            form => form[Place] is { } typed && form.IsYes(Here)
                ? NewPlace.OfferedAsync(desk, form, typed, $"put {Counted.Sheets(sheets.Count)} there", place => SaveAsync(desk, sheets, form, place))
                : SaveAsync(desk, sheets, form, null))
        {
            Name = "buyer gives back",
            About = [sheets.About, "It belongs again to whoever sold it. A sale that never was is taken back with t instead."],
            OwnEachTime = [Refund, Note],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form, string? place)
    {
        var currency = form.FieldOf(Currency);
        BuyersReturn given = new()
        {
            Date = DayOf.Deed(desk, form[Date]),
            Refund = MoneyFields.MinorUnits(form[Refund], currency),
            Currency = MoneyFields.Of(currency),
            IsHere = form.IsYes(Here),
            Note = form[Note],
        };
        var (count, meant) = await desk.Store.Do(register => (register.TakeBackFromBuyer.Run(sheets.ByCode, place, given), LastStep.Of(register, sheets)));

        return new Saved(MovesSaid.TakenBackFromBuyer(count, given.Refund, given.Currency, given.Date)) { Undo = LastStep.Undoing(desk, "that step", sheets, meant, given.IsHere, transfer: true) };
    }
}
