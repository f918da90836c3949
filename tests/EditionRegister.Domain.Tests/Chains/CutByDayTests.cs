using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Tests.Chains;

/// <summary>A chain cut at the end of 15 March 2026; each link goes to the person of its number. Worked out by hand.</summary>
public sealed class CutByDayTests
{
    private static readonly DateOnly Day = new(2026, 3, 15);

    [Theory]
    [InlineData("2026-01-01 2026-03-15", 2, 0)] // On the day itself is by the day.
    [InlineData("2026-01-01 2026-03-16", 1, 0)]
    [InlineData("2026-01-01 2026-03", 1, 1)] // In March: before or after, nobody knows.
    [InlineData("2026-01-01 2026-02 2026-04", 2, 0)]
    [InlineData("2026-01-01 2026-03 2026-03-10", 3, 0)] // The step before a sure one is sure with it.
    [InlineData("2026-01-01 2026-03 2026-03-20", 1, 1)]
    [InlineData("2026-01-01 ? ?", 1, 2)]
    [InlineData("? 2026-04", 1, 0)] // The first link is where it began, whenever that was.
    [InlineData("2026 2026-03-20", 1, 0)]
    [InlineData("2026-05 2026-06", 0, 0)] // It began later: there was none.
    [InlineData("2026-01-01 2026-03-20 2026-03-10", 1, 0)] // Out of order: no further than the first that is surely later.
    [InlineData("", 0, 0)]
    [InlineData("2026-01-01 sometime", 1, 1)] // Words that are no date bound nothing.
    public void It_goes_as_far_as_it_surely_had_come(string dates, int sure, int possible)
    {
        var chain = Chain(dates);

        var cut = CutByDay.Whereabouts(chain, Day, _ => false);

        Assert.Equal(chain.Take(sure), cut.Sure);
        Assert.Equal(chain.Skip(sure).Take(possible), cut.Possible);
        Assert.Equal(possible, cut.Possible.Count);
    }

    [Theory]
    [InlineData("2026-01-01 2026-03", 2, 0)]
    [InlineData("2026-01-01 ?", 2, 0)]
    [InlineData("2026-01-01 2026-04", 1, 0)] // Written down beforehand: it had not happened yet.
    public void What_was_on_record_by_then_had_happened_unless_its_date_says_otherwise(string dates, int sure, int possible)
    {
        var cut = CutByDay.Whereabouts(Chain(dates), Day, _ => true);

        Assert.Equal((sure, possible), (cut.Sure.Count, cut.Possible.Count));
    }

    [Fact]
    public void Ownership_is_cut_alike()
    {
        OwnershipLink[] chain = [Transfer(1, "2026-01-01"), Transfer(2, "2026-03"), Transfer(3, "2026-04-01")];

        var cut = CutByDay.Ownership(chain, Day, _ => false);

        Assert.Equal([1L], cut.Sure.Select(link => link.Id));
        Assert.Equal([2L], cut.Possible.Select(link => link.Id));
    }

    private static List<WhereaboutsLink> Chain(string dates) =>
    [
        .. dates.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((date, at) => new WhereaboutsLink(
            at + 1, 1, at + 1, "put-away", null, Position.With(at + 1), date == "?" ? RecordedDate.None : RecordedDate.Read(date), RecordedDate.None, null, null)),
    ];

    private static OwnershipLink Transfer(long id, string date) => new(id, 1, (int)id, "sold", null, Owner.Known(id), null, RecordedDate.Read(date), null, null, null, null);
}
