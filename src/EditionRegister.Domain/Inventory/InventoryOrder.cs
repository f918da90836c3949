namespace EditionRegister.Domain.Inventory;

/// <summary>The order of the inventory. Lists too long for memory sort by <see cref="InventoryPlace"/>, which does not hold on to the work.</summary>
public sealed class InventoryOrder : IComparer<InventoryPlace>, IComparer<InventorySheet>
{
    public static InventoryOrder Instance { get; } = new();

    public int Compare(InventoryPlace? x, InventoryPlace? y) => x is null ? (y is null ? 0 : -1) : x.CompareTo(y);

    public int Compare(InventorySheet? x, InventorySheet? y) => Compare(x is null ? null : Place(x), y is null ? null : Place(y));

    /// <summary>Finds each sheet's place once.</summary>
    public static IEnumerable<InventorySheet> Sorted(IEnumerable<InventorySheet> sheets) => sheets.OrderBy(Place, Instance);

    private static InventoryPlace Place(InventorySheet sheet) => InventoryPlace.Of(sheet.Work, sheet.Impression);
}
