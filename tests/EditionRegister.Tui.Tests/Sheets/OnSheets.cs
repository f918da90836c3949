using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Sheets;

/// <summary>Sheets laid out so that the keys of sheets work on them, as any page of sheets does.</summary>
internal static class OnSheets
{
    /// <summary>“Harbour at Low Water” of the demo.</summary>
    public static ImpressionChoice Harbour(string numbers) => new() { Edition = 1, Sheets = numbers };

    public static Impression Sheet(this TestHouse house, ImpressionChoice choice) => house.Register.LookAround.Chosen(choice).SelectMany(chosen => chosen.Sheets).Single();

    public static string WhereIs(this TestHouse house, ImpressionChoice choice) => string.Join("; ", house.Register.LookAround.Chosen(choice)
        .SelectMany(chosen => chosen.Sheets.Select(sheet => Domain.Chains.WhereInWords.Of(chosen.Work, sheet))).Distinct());

    public static string WhoseIs(this TestHouse house, ImpressionChoice choice) => string.Join("; ", house.Register.LookAround.Chosen(choice)
        .SelectMany(chosen => chosen.Sheets.Select(sheet => Domain.Chains.WhereInWords.OwnerOf(chosen.Work, sheet))).Distinct());

    /// <summary>Lays sheets out and presses a key on them.</summary>
    public static async Task PressOnAsync(this TestHouse house, ImpressionChoice choice, string key, string called = "these")
    {
        house.House.Here.Open(new TextPageOf("sheets", "", _ => []) { More = SheetDeeds.Keys(house.House.Desk, () => new ChosenSheets(choice, called)) });
        await house.PressAsync(key);
    }

    /// <summary>Opens one sheet as other pages do.</summary>
    public static async Task OpenSheetAsync(this TestHouse house, ImpressionChoice choice)
    {
        var code = house.Sheet(choice).ShownCode;
        house.House.Here.Open(new TextPageOf("sheets", "", _ => []) { More = [KeyDeed.Opens("*", "open", () => new ImpressionPage(house.House.Desk, code))] });
        await house.PressAsync("*");
    }
}
