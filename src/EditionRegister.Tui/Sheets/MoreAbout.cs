using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Conditions;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Stock;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is done to a sheet now and then, behind one key: a short list to pick from.</summary>
internal static class MoreAbout
{
    private static readonly IReadOnlyList<More> Entries =
    [
        Opens("a", "record what was altered on the sheet itself", AlterForm.Of),
        Opens("v", "say how it differs from the others of its edition", VaryForm.Of),
        Opens("g", "say that it is the ghost of another print", GhostForm.Of),
        Opens("d", "record a dedication", DedicateForm.Of),
        Opens("r", "replace it by a spare: its number goes to another sheet", ReplaceForm.Of),
        Opens("w", "record that it was worked over by hand into a work of its own", WorkOverForm.Of),
        new("p", "pictures: see, add, take off", (desk, sheets) => Task.FromResult(Pictures.PicturesOfSheet.Open(desk, sheets))),
        new("h", "hand them over, code by code", (desk, sheets) => Task.FromResult<Opening?>(new DeliveryPage(desk, sheets))),
        new("c", "see condition reports", (desk, sheets) => Task.FromResult(ConditionPage.Of(desk, sheets))),
    ];

    private static More Opens(string key, string shown, Func<Desk, SheetsAtHand, Opening> open) => new(key, shown, (desk, sheets) => Task.FromResult<Opening?>(open(desk, sheets)));

    /// <param name="desk">The desk.</param>
    /// <param name="meant">Reads the sheets meant when the key is pressed; null where there are none.</param>
    public static IEnumerable<KeyDeed> Keys(Desk desk, Func<Task<SheetsAtHand?>> meant)
    {
        if (Entries.Count == 0)
        {
            return [];
        }

        return [new KeyDeed("o", "other deeds", OpenAsync) { Explained = "What is done to a sheet now and then: pick it from a short list." }];

        async Task<Opening?> OpenAsync() => await meant() is { } sheets
            ? new Choice("What is to be done?", [.. Entries.Select(entry => new Choosable(entry.Key, entry.Shown, () => entry.OpenAsync(desk, sheets)))])
            : null;
    }
}

/// <summary>One line of that list.</summary>
/// <param name="Key">A letter of its own in this list.</param>
/// <param name="Shown">A verb and what it is done to.</param>
/// <param name="OpenAsync">What comes of it.</param>
internal sealed record More(string Key, string Shown, Func<Desk, SheetsAtHand, Task<Opening?>> OpenAsync);
