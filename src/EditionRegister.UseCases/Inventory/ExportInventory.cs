using EditionRegister.Domain;
using EditionRegister.Domain.Inventory;
using EditionRegister.Formats.Csv;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Inventory;

/// <summary>Which impressions an inventory lists; null asks for no restriction.</summary>
public sealed record InventoryChoice
{
    public string? Maker { get; init; }

    public long? Edition { get; init; }

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
        var rows = store.Read(reader => Rows(reader, choice));

        if (rows.Count == 0)
        {
            throw DocumentRefusals.NothingToList();
        }

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

    private static List<string?[]> Rows(Reader reader, InventoryChoice choice)
    {
        var maker = choice.Maker is { } who ? Persons.Find(reader.Book, who) : (long?)null;
        var places = choice.Place is { } path ? Places.Within(reader.Book, Places.Find(reader.Book, path)) : null;

        var sheets = reader.Works()
            .Where(work => maker is null || work.Makers.Any(person => person.Id == maker))
            .SelectMany(work => work.Impressions.Select(sheet => new InventorySheet(work, sheet)))
            .Where(sheet => choice.Edition is null || sheet.Work.EditionOf(sheet.Impression)?.Id == choice.Edition)
            .Where(sheet => places is null || (sheet.Impression.Where?.Place is { } place && places.Contains(place)))
            .Where(sheet => !choice.Available || FreeToSell.Of(sheet.Work, sheet.Impression) == FreeToSell.Yes);

        return [.. InventoryOrder.Sorted(sheets).Select(sheet => InventoryRow.Of(sheet.Work, sheet.Impression, choice.Owners))];
    }
}
