using EditionRegister.Domain;
using EditionRegister.Domain.Inventory;
using EditionRegister.Formats.Csv;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.UseCases.Inventory;

/// <summary>Which impressions an inventory lists; null asks for no restriction.</summary>
public sealed record InventoryChoice
{
    public string? Maker { get; init; }

    public long? Edition { get; init; }

    /// <summary>Only these impressions; what else is asked for narrows them.</summary>
    public ImpressionChoice? Impressions { get; init; }

    /// <summary>A place, with all places inside it.</summary>
    public string? Place { get; init; }

    /// <summary>Only what is free to sell.</summary>
    public bool Available { get; init; }

    /// <summary>Buyers' names, net prices and notes too: only where they are asked for.</summary>
    public bool Owners { get; init; }
}

/// <summary>Writes the inventory as CSV (RFC 4180), sorted, so that the same register gives the same bytes.</summary>
public sealed class ExportInventory(RegisterStore store)
{
    /// <summary>Answers how many impressions were listed.</summary>
    /// <exception cref="RefusedException">nothing-to-list, person-not-found, place-not-found.</exception>
    public int Run(InventoryChoice choice, Stream stream)
    {
        var rows = store.Read(reader => InventoryRows.Of(reader, choice));
        CsvFile.Write(stream, InventoryColumns.Names(choice.Owners), rows);

        return rows.Count;
    }

    /// <summary>To a file, beside it first and then renamed.</summary>
    public int Run(InventoryChoice choice, string path)
    {
        var count = 0;
        Output.Write(path, stream => count = Run(choice, stream));

        return count;
    }
}
