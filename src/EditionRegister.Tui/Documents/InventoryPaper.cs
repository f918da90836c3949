using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.Tui.Documents;

/// <summary>The inventory as CSV, for a gallery, a fair or a bookkeeper; with owners only for one's own books.</summary>
internal sealed class InventoryPaper(string key, string name, bool owners) : Paper(key, name)
{
    private const int LabelColumns = 16;

    private string FileName => owners ? "inventory-with-owners.csv" : "inventory.csv";

    public override async Task<PreviewLeaves> PreviewAsync(Desk desk, PaperOrder order)
    {
        var preview = await desk.Store.Do(register => register.PreviewInventory.Run(Choice(order)));

        return new PreviewLeaves(
            $"{FileName}: {Counted.Of(preview.Rows.Count, "impression")}, {Counted.Of(preview.Columns.Count, "column")}.",
            [.. preview.Rows.Select(row => new PreviewLeaf(row[0] ?? "", width => preview.Columns.SelectMany((column, at) => SideBySide.Fact(column, row[at] ?? "", LabelColumns, width))))]);
    }

    public override async Task<Written> WriteAsync(Desk desk, PaperOrder order)
    {
        desk.Progress($"Writing {Counted.Of(order.Codes.Count, "impression")}…");
        var (count, path) = await desk.Store.Do(register =>
        {
            var file = Path.Combine(order.Folder ?? register.Folder.Exports, FileName);

            return (register.ExportInventory.Run(Choice(order), file), file);
        });
        desk.Written.Add([path]);

        return new Written(PapersSaid.Listed(count, path), [path], owners ? "It names owners, and what was paid: for your own books, not to hand out." : null);
    }

    private InventoryChoice Choice(PaperOrder order) => new() { Impressions = order.Choice, Owners = owners };
}
