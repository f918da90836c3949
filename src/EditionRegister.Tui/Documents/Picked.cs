using EditionRegister.Tui.Sheets;

namespace EditionRegister.Tui.Documents;

/// <summary>Sheets that were picked.</summary>
/// <param name="Chosen">The sheets, and how they are called.</param>
/// <param name="IsWhole">All of an edition, a place or a list, and not each by its name: what does not fit may be passed over.</param>
internal sealed record Picked(ChosenSheets Chosen, bool IsWhole = false);
