using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Text;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>A list finds what somebody finds who leafs through all works, sheet by sheet, and reads what a list prints of each.</summary>
public sealed class ListImpressionsTests(ListImpressionsTests.TheDemo demo) : IClassFixture<ListImpressionsTests.TheDemo>
{
    [Theory]
    [InlineData("harbour")]
    [InlineData("HÄRBOUR")]
    [InlineData("low water")]
    [InlineData("water low")]
    [InlineData("rain street")]
    [InlineData("tolland", "drawer 2")]
    [InlineData("drawer 2 tolland")]
    [InlineData("studio › plan chest")]
    [InlineData("WYGN")]
    [InlineData("g3-wy")]
    [InlineData("F5G3-WYGN")]
    [InlineData("f5g3wygn")]
    [InlineData("untitled")]
    [InlineData("[unknown]")]
    [InlineData("nothing of the kind")]
    [InlineData("-")]
    public void Words_are_found_where_a_reader_finds_them(params string[] texts)
    {
        var leafed = demo.Sheets.Where(listed => texts.All(text => Printed(listed).Any(part => part.Contains(SearchText.Fold(text), StringComparison.Ordinal)))).Select(Code).ToList();

        var found = demo.Register.ListImpressions.Run(new ImpressionsWanted { Texts = texts });

        Assert.Equal(leafed, found.Page.Select(Code));
        Assert.Equal((leafed.Count, demo.Sheets.Count), (found.Found, found.All));
    }

    [Fact]
    public void Filters_keep_what_they_name_and_pages_join_in_the_order_of_the_piles()
    {
        Assert.Equal(Codes(one => one.Impression.Standing == "held-out"), Found(new ImpressionsWanted { Standing = "held-out" }));
        Assert.Equal(Codes(one => one.Work.EditionOf(one.Impression)?.Id == 2), Found(new ImpressionsWanted { Edition = 2 }));
        Assert.Equal(Codes(one => one.Work.Id == 3), Found(new ImpressionsWanted { Work = 3 }));
        Assert.Equal(Codes(one => one.Work.ShownMaker.Contains("Birdseye", StringComparison.Ordinal)), Found(new ImpressionsWanted { Maker = "birds" }));
        Assert.Equal(Codes(one => one.Work.Makers.Any(maker => maker.Id == 1)), Found(new ImpressionsWanted { Maker = "1" }));
        Assert.Equal(Codes(one => WhereInWords.Of(one.Work, one.Impression).StartsWith("in Studio", StringComparison.Ordinal)), Found(new ImpressionsWanted { Place = "studio" }));
        Assert.Empty(Found(new ImpressionsWanted { Maker = "nobody of that name" }));
        Assert.Equal(Codes(_ => true), Enumerable.Range(0, (demo.Sheets.Count / 7) + 1).SelectMany(page => Found(new ImpressionsWanted { Skip = page * 7, Take = 7 })));
    }

    private static IEnumerable<string> Printed(ImpressionListed one)
    {
        var where = one.Impression.Where?.Place is { } place ? one.Work.Book.PathOf(place) : "";

        return new[] { one.Work.ShownTitle, one.Work.ShownMaker, one.Impression.ShownCode, one.Impression.Code, where }.Select(SearchText.Fold);
    }

    private static string Code(ImpressionListed listed) => listed.Impression.ShownCode;

    private IEnumerable<string> Codes(Func<ImpressionListed, bool> which) => demo.Sheets.Where(which).Select(Code);

    private IEnumerable<string> Found(ImpressionsWanted filter) => demo.Register.ListImpressions.Run(filter).Page.Select(Code);

    public sealed class TheDemo : IDisposable
    {
        private readonly TempFolder _folder = new();

        public TheDemo()
        {
            Register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));
            Sheets = [.. from work in Register.LookAround.Works() from sheet in work.Impressions select new ImpressionListed(work, sheet)];
        }

        public Register Register { get; }

        public IReadOnlyList<ImpressionListed> Sheets { get; }

        public void Dispose() => _folder.Dispose();
    }
}
