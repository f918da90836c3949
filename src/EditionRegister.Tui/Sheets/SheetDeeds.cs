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
    public static IReadOnlyList<KeyDeed> Keys(Desk desk, Func<ChosenSheets?> chosen) => [];
}
