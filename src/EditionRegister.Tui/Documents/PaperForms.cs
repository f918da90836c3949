using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>Opens what is asked before documents of some sheets are written; other rooms lead here with sheets already chosen.</summary>
internal static class PaperForms
{
    /// <param name="desk">The desk.</param>
    /// <param name="choice">The sheets.</param>
    /// <param name="called">How they are called: “Harbour” 3/12 to 7/12.</param>
    public static Opening Of(Desk desk, ImpressionChoice choice, string called) => new GoTo(RoomName.Documents);
}
