using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>Opens what is asked before documents of some sheets are written; other rooms lead here with sheets already chosen.</summary>
internal static class PaperForms
{
    /// <summary>The page opens where one stands, so that Esc leads back to the sheets.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="choice">The sheets.</param>
    /// <param name="called">How they are called: “Harbour” 3/12 to 7/12.</param>
    public static Opening Of(Desk desk, ImpressionChoice choice, string called) => new DocumentsPage(desk, new ChosenSheets(choice, called));

    /// <summary>The preview of one kind of paper at once.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="key">The key of the kind.</param>
    /// <param name="choice">The sheets.</param>
    /// <param name="called">How they are called.</param>
    /// <param name="codes">Each of them by its code.</param>
    public static Task<Opening?> PreviewAsync(Desk desk, string key, ImpressionChoice choice, string called, IReadOnlyList<string> codes) =>
        Paper.All.First(paper => paper.Key == key).LookAsync(desk, new PaperOrder(new ChosenSheets(choice, called), codes));
}
