using EditionRegister.Domain.Stock;

namespace EditionRegister.Domain.Tests.Stock;

public class StockComparisonTests
{
    [Fact]
    public void What_was_scanned_comes_first_in_its_order_and_then_what_is_missing()
    {
        StockThing a = new(1, "AAAA2222", 11, null), b = new(1, "BBBB2222", 12, null), c = new(2, "CCCC2222", null, 5), elsewhere = new(3, "DDDD2222", 31, null);

        var found = StockComparison.Of([a, b, c], [("CCCC2222", c), ("DDDD2222", elsewhere), ("EEEE2222", null), ("AAAA2222", a)]);

        Assert.Equal(
            [
                new StockFound("CCCC2222", c, "present"),
                new StockFound("DDDD2222", elsewhere, "stranger"),
                new StockFound("EEEE2222", null, "not-ours"),
                new StockFound("AAAA2222", a, "present"),
                new StockFound("BBBB2222", b, "missing"),
            ],
            found);
    }

    [Fact]
    public void In_an_empty_place_everything_is_missing()
    {
        StockThing a = new(1, "AAAA2222", 11, null);

        Assert.Equal([new StockFound("AAAA2222", a, "missing")], StockComparison.Of([a], []));
    }
}
