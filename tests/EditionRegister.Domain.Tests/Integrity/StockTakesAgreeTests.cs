using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Stock;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class StockTakesAgreeTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _sheet = $"1/12 of “Harbour” ({Clean.The("1/12").ShownCode})";
    private readonly string _away = $"5/12 of “Harbour” ({Clean.The("5/12").ShownCode})";

    [Fact]
    public void Missing_and_still_said_to_lie_there()
    {
        Assert.Equal(
            [$"Query: {_sheet} was not found when stock was taken of studio › plan chest (2026-09-01), and is still said to be in studio › plan chest."],
            Findings("1/12", sheet => sheet with { Stock = [Take(Harbour.Drawer, "missing")] }));
        Assert.Equal(
            [$"Query: {_sheet} was not found when stock was taken of studio (2026-09-01), and is still said to be in studio › plan chest."],
            Findings("1/12", sheet => sheet with { Stock = [Take(1, "missing")] }));
    }

    [Fact]
    public void A_stranger_that_is_still_said_to_be_elsewhere()
    {
        Assert.Equal(
            [$"Note: {_away} was found when stock was taken of studio › plan chest (2026-09-01), and is said to be with Tidewater Gallery."],
            Findings("5/12", sheet => sheet with { Stock = [Take(Harbour.Drawer, "stranger")] }));
    }

    [Fact]
    public void What_is_present_settled_or_found_since_is_no_finding()
    {
        Assert.Empty(Findings("1/12", sheet => sheet with { Stock = [Take(Harbour.Drawer, "present")] }));
        Assert.Empty(Findings("1/12", sheet => sheet with { Stock = [Take(Harbour.Drawer, "missing"), Take(1, "present") with { Take = 4, V = 50 }] }));
        Assert.Empty(Findings("1/12", sheet => sheet with
        {
            Stock = [Take(Harbour.Drawer, "missing")],
            Whereabouts = [.. sheet.Whereabouts, new(900, 41, 2, "lost", sheet.Where, Position.Unknown, Harbour.On("2026-09-01"), RecordedDate.None, null, null)],
        }));
        Assert.Empty(Findings("1/12", sheet => sheet with
        {
            Stock = [Take(Harbour.Drawer, "missing")],
            Whereabouts = [.. sheet.Whereabouts, new(900, 41, 2, "put-away", sheet.Where, Position.InPlace(1), Harbour.On("2026-09-02"), RecordedDate.None, null, null)],
        }));
    }

    [Fact]
    public void Sold_before_the_stock_take_and_missing_there_is_no_finding() =>
        Assert.Empty(Findings("3/12", sheet => sheet with { Stock = [Take(Harbour.Drawer, "missing")] }));

    private static SheetInStock Take(long place, string outcome) => new(3, 40, place, Harbour.On("2026-09-01"), outcome);

    private static IReadOnlyList<string> Findings(string number, Func<Impression, Impression> change) => FindingsOf.Rule("StockTakesAgree", Clean.WithSheet(number, change));
}
