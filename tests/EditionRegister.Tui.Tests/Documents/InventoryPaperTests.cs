using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.Tui.Tests.Documents;

/// <summary>The inventory of chosen sheets, with owners and without.</summary>
public sealed class InventoryPaperTests
{
    [Fact]
    public async Task A_row_is_read_column_by_column_before_it_is_written()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "3, 5");
        await house.MakeAsync("i");

        await house.PressAsync("p", "Right");

        Assert.Equal(
            """
            inventory as CSV, without owners: to hand out; “Harbour at Low Water” 3, 5
            inventory.csv: 2 impressions, 24 columns.
            2 of 2: YVN2-SZ7W
            code              YVN2-SZ7W
            maker             Mira Tolland
            title             Harbour at Low Water
            year              2026
            technique         reduction linocut in four colours
            paper             Japanese kozo, 70 g/m²
            state
            standing          kept
            number            5/12
            edition kind      limited
            edition size      12
            printed           2026-02-02/2026-02-14
            signed            yes
            inscription
            image height mm   225
               more below
            """,
            house.Screen());
    }

    [Theory]
    [InlineData("i", "inventory.csv", false)]
    [InlineData("o", "inventory-with-owners.csv", true)]
    public async Task The_file_holds_what_the_command_writes_of_the_same_sheets(string kind, string name, bool owners)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "3, 5");
        await house.MakeAsync(kind);

        await house.PressAsync("w");

        using MemoryStream same = new();
        house.Register.ExportInventory.Run(new InventoryChoice { Impressions = new ImpressionChoice { Edition = PapersHouse.Harbour, Sheets = "3, 5" }, Owners = owners }, same);
        var written = await File.ReadAllBytesAsync(house.Exported(name), TestContext.Current.CancellationToken);
        Assert.Equal(same.ToArray(), written);
        Assert.Equal($"2 impressions listed in /register/exports/{name}.", house.Said());
        Assert.Equal(owners, System.Text.Encoding.UTF8.GetString(written).Contains("owner", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_file_of_the_sitting_is_listed_with_its_whole_path_the_latest_first()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "3, 5");

        foreach (var kind in (string[])["i", "l", "o", "r", "i"])
        {
            await house.MakeAsync(kind);
            await house.PressAsync("w", "Esc");
        }

        await house.PickAsync("harbour", "3");
        await house.MakeAsync("r");
        await house.PressAsync("w", "Esc");
        var foot = house.Shown();
        await house.PressAsync("f");

        Assert.EndsWith(
            $"""
            Written in this sitting:
            /register/exports/certificate-{house.Statement(PapersHouse.Harbour, "3").Serial}.pdf
            /register/exports/inventory.csv
            /register/exports/inventory-with-owners.csv
            and 1 more: press f
            """,
            foot,
            StringComparison.Ordinal);
        Assert.Equal(
            $"""
            /register/exports/certificate-{house.Statement(PapersHouse.Harbour, "3").Serial}.pdf
            /register/exports/inventory.csv
            /register/exports/inventory-with-owners.csv
            /register/exports/labels.pdf
            """,
            house.Shown());
    }
}
