using EditionRegister.Store;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Demo;

/// <summary>The loan and the counted drawer of the demo, against figures worked out by hand.</summary>
public sealed class StockSceneTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _register;

    public StockSceneTests() => _register = new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("demo")));

    public void Dispose() => _folder.Dispose();

    // “Gull Rock”: 12 started - 1 spoiled = 11 sheets. “Tide Table”: 10 started = 10 sheets. 21 lie in Drawer 2; one of the 10 is not there: 21 - 1 = 20 present.
    // One sheet of “Harbour at Low Water”, left out, is there and belongs to Drawer 1: put away here, so that 20 + 1 = 21 lie there afterwards.
    [Fact]
    public void Drawer_2_was_counted()
    {
        var take = _register.LookAround.StockTakes("Studio › Plan chest › Drawer 2")[0];

        Assert.Equal((20, 1, 1, 0, 0), (take.Count("present"), take.Count("missing"), take.Count("stranger"), take.Count("not-ours"), take.Open));
        Assert.Equal(21, _register.LookAround.PlaceContents(take.Take.Place).Sheets);
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
}
