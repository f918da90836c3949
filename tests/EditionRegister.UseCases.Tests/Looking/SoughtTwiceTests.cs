using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>
/// Works of every sort, drawn: whatever is typed, the plan chest finds the lines, and a list the sheets, that somebody finds who leafs through all works whole,
/// place by place and sheet by sheet, without an index and without a query.
/// </summary>
public sealed class SoughtTwiceTests : IDisposable
{
    private readonly TempRegister _temp = new();

    public SoughtTwiceTests() => new RandomWorks(new RegisterStore(_temp.Register.Folder, new Surroundings(_temp.Time, new SeededRandomness("drawn"), _ => { })), seed: 7).Add(Depth.Of(60, 200, 600));

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void The_chest_finds_the_lines_that_leafing_finds()
    {
        var chest = _temp.Register.ReadChest();
        LeafedThrough leafed = new(_temp.Register);
        TypedSearches typed = new(leafed.Bits, seed: 3);
        var (met, read) = (0, 0);

        for (var round = 0; round < Depth.Of(300, 2_000, 20_000); round++)
        {
            var text = typed.Next();
            var found = chest.Find(text);

            Assert.True(leafed.Find(text).SequenceEqual(found), text);
            met += found.Count is > 0 and < 50 ? 1 : 0;
            read += found.Sought.Understood.Any() ? 1 : 0;
        }

        // Neither everything nor nothing, and mostly something to read.
        Assert.True(met > 100 && read > 150, FormattableString.Invariant($"{met} met, {read} read"));
    }

    [Fact]
    public void A_list_finds_the_sheets_that_leafing_finds()
    {
        LeafedThrough leafed = new(_temp.Register);
        TypedSearches typed = new(leafed.Bits, seed: 4);
        var own = _temp.Register.LookAround.OwnWords();

        for (var round = 0; round < Depth.Of(120, 600, 6_000); round++)
        {
            string[] texts = [typed.Next()];

            var found = _temp.Register.ListImpressions.Run(new ImpressionsWanted { Texts = texts });

            Assert.True(leafed.Sheets(Sought.Read(texts, own)).Order().SequenceEqual(found.Page.Select(one => one.Impression.Id).Order()), texts[0]);
        }
    }
}
