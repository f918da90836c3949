using EditionRegister.Domain.Inventory;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Inventory;

/// <summary>The rows of an inventory, sorted.</summary>
internal static class InventoryRows
{
    /// <exception cref="Domain.RefusedException">nothing-to-list, person-not-found, place-not-found, or the impressions chosen cannot be found.</exception>
    public static IReadOnlyList<string?[]> Of(Reader reader, InventoryChoice choice)
    {
        var maker = choice.Maker is { } who ? Persons.Find(reader.Book, who) : (long?)null;
        var places = choice.Place is { } path ? Places.Within(reader.Book, Places.Find(reader.Book, path)) : null;

        var sheets = Sheets(reader, choice)
            .Where(sheet => maker is null || sheet.Work.Makers.Any(person => person.Id == maker))
            .Where(sheet => choice.Edition is null || sheet.Work.EditionOf(sheet.Impression)?.Id == choice.Edition)
            .Where(sheet => places is null || (sheet.Impression.Where?.Place is { } place && places.Contains(place)))
            .Where(sheet => !choice.Available || FreeToSell.Of(sheet.Work, sheet.Impression) == FreeToSell.Yes);

        List<string?[]> rows = [.. InventoryOrder.Sorted(sheets).Select(sheet => InventoryRow.Of(sheet.Work, sheet.Impression, choice.Owners))];

        return rows.Count == 0 ? throw DocumentRefusals.NothingToList() : rows;
    }

    private static IEnumerable<InventorySheet> Sheets(Reader reader, InventoryChoice choice) => choice.Impressions is { } chosen
        ? ImpressionsChosen.Find(reader, chosen).SelectMany(ofWork => ofWork.Sheets.Select(sheet => new InventorySheet(ofWork.Work, sheet)))
        : reader.Works().SelectMany(work => work.Impressions.Select(sheet => new InventorySheet(work, sheet)));
}
