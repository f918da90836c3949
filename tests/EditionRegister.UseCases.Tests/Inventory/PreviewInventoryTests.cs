using System.Text;
using EditionRegister.Domain;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.UseCases.Tests.Inventory;

public sealed class PreviewInventoryTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public PreviewInventoryTests() => _register = SmallEdition.Make(_temp.Register);

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Shows_the_cells_that_are_then_written(bool owners)
    {
        InventoryChoice choice = new() { Impressions = SmallEdition.Numbers("3, 1"), Owners = owners };

        var preview = _register.PreviewInventory.Run(choice);

        using MemoryStream stream = new();
        _register.ExportInventory.Run(choice, stream);

        // None of these cells needs quotes (RFC 4180).
        string[] lines = [string.Join(',', preview.Columns), .. preview.Rows.Select(row => string.Join(',', row))];
        Assert.Equal(string.Concat(lines.Select(line => line + "\r\n")), Encoding.UTF8.GetString(stream.ToArray()));
        Assert.Equal(["1/4", "3/4"], preview.Rows.Select(row => row[8]));
    }

    [Fact]
    public void What_else_is_asked_for_narrows_the_impressions_chosen()
    {
        var refused = Assert.Throws<RefusedException>(() => _register.PreviewInventory.Run(new InventoryChoice { Impressions = new ImpressionChoice { All = true }, Edition = 99 }));

        Assert.Equal("nothing-to-list", refused.Name);
    }
}
