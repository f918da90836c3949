using EditionRegister.Tui.Conditions;
using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Sheets;

/// <summary>Which sheets a deed is about, and how they are called in a form's title: “Harbour” 3/12 to 7/12.</summary>
internal sealed record ChosenSheets(ImpressionChoice Choice, string Called);

/// <summary>What can be done to one sheet or to several marked ones, with the same keys wherever sheets lie.</summary>
internal static class SheetDeeds
{
    /// <param name="desk">The desk.</param>
    /// <param name="chosen">The sheets meant when a key is pressed; null where there are none.</param>
    public static IReadOnlyList<KeyDeed> Keys(Desk desk, Func<ChosenSheets?> chosen)
    {
        return chosen() is null ? [] :
        [
            new KeyDeed("s", "sell", () => MeantAsync(SellForm.OfAsync)) { Explained = "Records a sale: to whom, for how much; with a certificate and a label in the same go where you want them." },
            Deed("m", "put away", "Puts sheets away in a drawer or another place; a place that is new can be made on the way.", PutAwayForm.Of),
            Deed("c", "consign", "Gives sheets to a gallery or somebody else to sell: they stay their owner's.", ConsignForm.Of),
            Deed("r", "take back home", "Records that sheets came back from whoever had them.", ReturnForm.Of),
            new KeyDeed("a", "next steps", () => MeantAsync(NextSteps.OfAsync)) { Explained = NextSteps.Explained },
            Deed("p", "price", "Says what sheets are offered for, and whether they are for sale at all.", PriceForm.Of),
            Deed("i", "inscribe", "Records what stands on the sheet: number, title, signature and anything else, letter by letter.", InscribeForm.Of),
            new KeyDeed("w", "list for a show", () => MeantAsync(ShowChoice.OfAsync)) { Explained = "Puts sheets on the list of an exhibition, sale or fair." },
            new KeyDeed("d", "documents", () => Task.FromResult(chosen() is { } meant ? PaperForms.Of(desk, meant.Choice, meant.Called) : null)) { Explained = "Certificates, labels and lists of these sheets." },
            Deed("e", "edit", "Puts right what is recorded of the sheet itself: whether it is kept, spare or left out, and its condition.", StandingForm.Of),
            new KeyDeed("x", "examine", () => MeantAsync(ExamineForm.OfAsync)) { Explained = "Writes a condition report: what is the matter with sheets, when they rest, go out or come back." },
            Deed("t", "take a step back", "Takes the last move or sale back where it was recorded by mistake; the logbook keeps both.", TakeBackQuestion.Of),
            .. MoreAbout.Keys(desk, async () => chosen() is { } meant ? await SheetsAtHand.ReadAsync(desk, meant) : null),
        ];

        KeyDeed Deed(string key, string does, string explained, Func<Desk, SheetsAtHand, Opening> open) =>
            new(key, does, () => MeantAsync((at, sheets) => Task.FromResult<Opening?>(open(at, sheets)))) { Explained = explained };

        async Task<Opening?> MeantAsync(Func<Desk, SheetsAtHand, Task<Opening?>> open) =>
            chosen() is { } meant ? await open(desk, await SheetsAtHand.ReadAsync(desk, meant)) : null;
    }
}
