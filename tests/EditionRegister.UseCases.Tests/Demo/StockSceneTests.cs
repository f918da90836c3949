using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Demo;

/// <summary>The loan and the counted drawer of the demo, against figures worked out by hand.</summary>
public sealed class StockSceneTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _register;

    public StockSceneTests() => _register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));

    public void Dispose() => _folder.Dispose();

    // “Gull Rock”: 12 started - 1 spoiled = 11 sheets, all there. “Tide Table”: 10 started = 10 sheets, one of which is not there: 10 - 1 = 9.
    // One sheet of “Harbour at Low Water”, left out, is there and belongs to Drawer 1: put away here. What other scenes laid into the drawer is there too.
    [Fact]
    public void Drawer_2_was_counted()
    {
        var take = _register.LookAround.StockTakes("Studio › Plan chest › Drawer 2")[0];

        Assert.Equal((11, 9), (Present(take, "Gull Rock"), Present(take, "Tide Table")));
        Assert.Equal((1, 1, 0, 0), (take.Count("missing"), take.Count("stranger"), take.Count("not-ours"), take.Open));
        Assert.Equal(take.Count("present") + 1, _register.LookAround.PlaceContents(take.Take.Place).Sheets);
        Assert.StartsWith("“Tide Table”", take.Lines.Single(line => line.Outcome == "missing").Called, StringComparison.Ordinal);
        Assert.Equal("“Harbour at Low Water” left out", take.Lines.Single(line => line.Outcome == "stranger").Called);
        Assert.Equal("Mira Tolland", take.By);
    }

    // 10/12 went out with one remark and came back with three; two of the three are new: 3 - 1 = 2.
    [Fact]
    public void A_sheet_came_back_with_two_things_more()
    {
        var sheet = _register.LookAround.Works().First(work => work.Title == "Harbour at Low Water").Impressions.First(one => one.Pencilled == "10/12");

        var compared = Domain.Conditions.ConditionComparison.LastOf(sheet)!;

        Assert.Equal((1, 3, 2, 1), (compared.Out!.Remarks.Count, compared.Back.Remarks.Count, compared.New.Count, compared.Same.Count));
        Assert.Equal(["handling-crease", "dented-corner"], compared.New.Select(remark => remark.Term));
        Assert.Equal(["pulled", "lent", "returned"], sheet.Whereabouts.Select(link => link.Kind));
        Assert.Contains("dented corner", sheet.Condition, StringComparison.Ordinal);
    }

    private static int Present(StockTakeSeen take, string title) => take.Lines.Count(line => line.Outcome == "present" && line.Called.Contains(title, StringComparison.Ordinal));
}
