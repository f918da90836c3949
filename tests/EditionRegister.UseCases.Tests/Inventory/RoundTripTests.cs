using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.Tests.ReadingIn;

namespace EditionRegister.UseCases.Tests.Inventory;

public sealed class RoundTripTests : IDisposable
{
    private readonly TempRegister _temp = new();

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_demo_exported_read_in_and_exported_again_is_the_same_bytes(bool owners)
    {
        var demo = Register.Open(DemoCopy.Into(new RegisterFolder(_temp.In("demo"))));
        InventoryChoice all = new() { Owners = owners };
        demo.ExportInventory.Run(all, _temp.In("first.csv"));

        _temp.Register.ReadIn.Run(_temp.In("first.csv"), []);
        _temp.Register.ExportInventory.Run(all, _temp.In("second.csv"));

        Assert.Equal(File.ReadAllText(_temp.In("first.csv")), File.ReadAllText(_temp.In("second.csv")));
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Fact]
    public void Museum_rows_exported_read_in_and_exported_again_are_the_same_bytes()
    {
        using TempRegister other = new();
        _temp.Register.ReadIn.Run(MuseumSpreadsheet.Make(_temp), ["text=number"]);
        _temp.Register.ExportInventory.Run(new InventoryChoice(), _temp.In("first.csv"));

        other.Register.ReadIn.Run(_temp.In("first.csv"), []);
        other.Register.ExportInventory.Run(new InventoryChoice(), other.In("second.csv"));

        Assert.Equal(File.ReadAllText(_temp.In("first.csv")), File.ReadAllText(other.In("second.csv")));
    }
}
