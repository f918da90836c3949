using EditionRegister.Domain.Works;

namespace EditionRegister.Tui.PlanChest;

/// <summary>How some sheets of a work are called in a title: “Harbour” 3/12; “Harbour” 3/12 to 7/12; 9 sheets of “Harbour”.</summary>
internal static class SheetsCalled
{
    private const int MostNamed = 3;

    /// <param name="work">The work.</param>
    /// <param name="chosen">Slots with sheets, in the order chosen; at least one.</param>
    public static string Of(Work work, IReadOnlyList<TraySlot> chosen) =>
        chosen.Count <= MostNamed && !(chosen.Count == MostNamed && AreARun(chosen)) ? $"{Called.Work(work)} {string.Join(", ", chosen.Select(Name))}"
        : AreARun(chosen) ? $"{Called.Work(work)} {Name(chosen[0])} to {Name(chosen[^1])}"
        : $"{Counted.Sheets(chosen.Count)} of {Called.Work(work)}";

    // Beside the numbers the standing of a sheet is no name for it.
    private static string Name(TraySlot slot) => slot.Numbering is null ? slot.Code! : slot.Cell.Spelled;

    private static bool AreARun(IReadOnlyList<TraySlot> chosen) =>
        chosen[0].Numbering is { } numbering && chosen.Select((slot, at) => slot.At == chosen[0].At + at && slot.Numbering?.Id == numbering.Id).All(same => same);
}
