using EditionRegister.Domain.Inventory;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Inventory;

/// <summary>An inventory before it is written: its columns, and its rows with a value or null for each.</summary>
public sealed record InventoryPreview(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string?>> Rows);

/// <summary>Shows the inventory as it would be written.</summary>
public sealed class PreviewInventory(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">nothing-to-list, person-not-found, place-not-found, or the impressions chosen cannot be found.</exception>
    public InventoryPreview Run(InventoryChoice choice) => new(InventoryColumns.Names(choice.Owners), store.Read(reader => InventoryRows.Of(reader, choice)));
}
