using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Works;

/// <summary>Sheets cut up or made up into impressions, by arithmetic.</summary>
public sealed class SheetsCutTests
{
    [Theory]
    [InlineData(null, null, 12, 12)]
    [InlineData(2, null, 12, 24)]
    [InlineData(null, 2, 24, 12)]
    [InlineData(2, 3, 9, 6)]
    public void So_many_sheets_give_so_many_impressions(int? cutInto, int? madeOf, int sheets, int impressions)
    {
        var cut = SheetsCut.Of(cutInto, madeOf);

        Assert.Equal(impressions, cut.Impressions(sheets));
        Assert.Equal(sheets, cut.Sheets(impressions));
    }

    // 23 sheets in pairs: one is left without its fellow.
    [Fact]
    public void What_does_not_come_out_even_gives_no_number() => Assert.Null(SheetsCut.Of(null, 2).Impressions(23));

    // 5 impressions cut two from a sheet need 3 sheets.
    [Fact]
    public void A_sheet_that_is_cut_for_one_impression_is_a_sheet_all_the_same() => Assert.Equal(3, SheetsCut.Of(2, null).Sheets(5));
}
