using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Inventory;

/// <summary>An impression with its work, as lists hold it.</summary>
public sealed record InventorySheet(Work Work, Impression Impression);
