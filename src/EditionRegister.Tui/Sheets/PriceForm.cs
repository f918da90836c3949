using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is asked when sheets are priced.</summary>
internal static class PriceForm
{
    private const string Asking = "Asking price";
    private const string Currency = "Currency";
    private const string ForSale = "For sale";
    private const string AsItIs = "as it is";

    private static readonly string[] Words = ["by-custom", "yes", "no", "unknown"];

    public static Form Of(Desk desk, SheetsAtHand sheets)
    {
        var (now, word) = (sheets.Same(sheet => (sheet.Asking, sheet.AskingCurrency)), sheets.Same(sheet => sheet.ForSale).Value);
        var currency = MoneyFields.Currency(Currency, now.Value.AskingCurrency ?? sheets.Settings.Currency);
        var given = PricesShown.Amount(now.Value.Asking, now.Value.AskingCurrency) ?? "";

        return new Form(
            $"Price {sheets.Called}",
            [
                MoneyFields.Amount(Asking, currency, sheets.IsOne ? "what it is offered for" : "what each is offered for; empty leaves their prices", given),
                currency,
                Words.Contains(word) ? Field.OneOf(ForSale, Words, word) : Field.OneOf(ForSale, [AsItIs, .. Words]),
            ],
            form => SaveAsync(desk, sheets, form))
        {
            Name = "price",
            About = [sheets.About, "By custom, proofs of some kinds are not for sale; all other sheets are."],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        var money = MoneyFields.Of(form.FieldOf(Currency));
        var typed = MoneyFields.MinorUnits(form[Asking], form.FieldOf(Currency));
        var asking = typed is null || sheets.Sheets.All(sheet => sheet.Asking == typed && sheet.AskingCurrency == money) ? null : typed;
        var word = form[ForSale] == AsItIs || sheets.Sheets.All(sheet => sheet.ForSale == form[ForSale]) ? null : form[ForSale];

        if (asking is null && word is null)
        {
            return new Saved("Nothing was changed: that is recorded already.");
        }

        var (count, after) = await desk.Store.Do(register =>
        {
            var done = register.PriceImpressions.Run(sheets.ByCode, asking, money, word, sheets.AsSeen);

            return (done, AsSeen(register, sheets));
        });

        return new Saved(SheetSaid.Priced(count, asking, money, word)) { Undo = Undoing(desk, sheets, asking is not null, word is not null, after) };
    }

    /// <summary>The old values once more, where all had the same ones and there was a price to go back to.</summary>
    private static Undoing? Undoing(Desk desk, SheetsAtHand sheets, bool wasPriced, bool wasSaid, SheetsAsSeen after)
    {
        var (price, word) = (sheets.Same(sheet => (sheet.Asking, sheet.AskingCurrency)), sheets.Same(sheet => sheet.ForSale));
        var (asking, money, forSale) = (wasPriced ? price.Value.Asking : null, price.Value.AskingCurrency, wasSaid ? word.Value : null);

        return (wasPriced && asking is null) || (wasSaid && forSale is null) ? null : new Undoing("the price", () => desk.Store.Do(register =>
            SheetSaid.Priced(register.PriceImpressions.Run(sheets.ByCode, asking, money, forSale, after), asking, money, forSale)));
    }

    private static SheetsAsSeen AsSeen(Register register, SheetsAtHand sheets) => new(register.LookAround.Chosen(sheets.ByCode).SelectMany(chosen => chosen.Sheets));
}
