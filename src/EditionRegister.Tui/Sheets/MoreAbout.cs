using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Sheets;

/// <summary>What is done to a sheet now and then, behind one key: a short list to pick from.</summary>
internal static class MoreAbout
{
    private static readonly IReadOnlyList<More> Entries =
    [
        new("a", "record what was altered on the sheet itself", (desk, sheets) => Task.FromResult<Opening?>(AlterForm.Of(desk, sheets))),
        new("v", "worked over by hand into a work of its own", (desk, sheets) => Task.FromResult<Opening?>(WorkOverForm.Of(desk, sheets))),
        new More("p", "pictures: see, add, take off", (desk, sheets) => Task.FromResult(Pictures.PicturesOfSheet.Open(desk, sheets))),
    ];

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
