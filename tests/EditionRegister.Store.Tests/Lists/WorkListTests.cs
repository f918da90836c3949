using EditionRegister.Domain.Facts;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Tests.Histories;

namespace EditionRegister.Store.Tests.Lists;

public sealed class WorkListTests : IDisposable
{
    private readonly TempRegister _register = new();

    public WorkListTests() => SmallStudio.Furnish(_register.Store);

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_line_says_how_much_there_is_of_a_work()
    {
        var line = Assert.Single(WorkList.Find(_register.Store, "tolland harb", 0, 10));

        Assert.Equal(new WorkLine(1, "Harbour", "given", "Mira Tolland", "linocut", "2025", Editions: 2, Impressions: 4, Kept: 2, Numbered: 1), line);
    }

    [Fact]
    public void What_is_not_there_is_not_found()
    {
        Assert.Empty(WorkList.Find(_register.Store, "tolland mill", 0, 10));
        Assert.Equal(0, WorkList.Count(_register.Store, "%"));
    }

    [Fact]
    public void Works_come_by_maker_and_title_page_by_page()
    {
        AddWork(2, "Mill", maker: 2);
        AddWork(3, "Anchor", maker: 1);
        AddWork(4, "Zenith", maker: null);

        var pages = Enumerable.Range(0, 2).SelectMany(page => WorkList.Find(_register.Store, null, page * 2, 2)).Select(line => line.Title);

        Assert.Equal(["Anchor", "Harbour", "Mill", "Zenith"], pages);
        Assert.Equal(4, WorkList.Count(_register.Store, " "));
    }

    [Fact]
    public void Both_lists_agree_with_works_read_whole_over_a_generated_history()
    {
        using TempRegister register = new("lists");
        new GeneratedHistory(register.Store, "lists").Add(200);
        var works = register.Store.Read(reader => reader.Works().ToList());

        var lines = WorkList.Find(register.Store, null, 0, 1_000).OrderBy(line => line.Id);
        var sheets = ImpressionList.Find(register.Store, new ImpressionFilter(), 0, 10_000).OrderBy(line => line.Id);

        Assert.Equal(
            works.Select(work => (work.Id, work.Title, Makers(work), work.Editions.Count, work.Impressions.Count, work.Impressions.Count(sheet => sheet.Number is not null))),
            lines.Select(line => (line.Id, line.Title, line.Makers, line.Editions, line.Impressions, line.Numbered)));
        Assert.Equal(
            works.SelectMany(work => work.Impressions.Select(sheet => (sheet.Id, sheet.Code, work.Id, (long?)sheet.Number, sheet.Where?.Place, sheet.Where?.Holder, sheet.Whose?.Person))).OrderBy(sheet => sheet.Item1),
            sheets.Select(line => (line.Id, line.Code, line.WorkId, line.Ordinal, line.PlaceId, line.HolderId, line.OwnerId)));
    }

    private static string? Makers(Domain.Works.Work work) => work.Makers.Any() ? work.ShownMaker : null;

    private void AddWork(long id, string title, long? maker) => _register.Store.Write("add-work", writing =>
    {
        var work = writing.On(Root.Work(id));
        work.Set("work", id, ("title", title), ("title_state", "given"), ("maker_state", maker is null ? "unknown" : "named"));

        if (maker is { } person)
        {
            work.Set("work_role", id, ("work", id), ("person", person), ("role", "maker"), ("ordinal", 1));
        }

        return true;
    });
}
