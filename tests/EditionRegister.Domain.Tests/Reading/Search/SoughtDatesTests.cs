using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Search;

namespace EditionRegister.Domain.Tests.Reading.Search;

/// <summary>Which dates on record may lie in one that is typed.</summary>
public sealed class SoughtDatesTests
{
    [Theory]
    [InlineData("c. 2019", "2014", true)]
    [InlineData("c. 2019", "2024", true)]
    [InlineData("c. 2019", "2013", false)]
    [InlineData("c. 2019", "2025", false)]
    [InlineData("2019", "c. 2023", true)]
    [InlineData("2019", "c. 2025", false)]
    [InlineData("1960s", "1969-12", true)]
    [InlineData("1960s", "1970", false)]
    [InlineData("spring 2024", "2024", true)]
    [InlineData("spring 2024", "2024-07", false)]
    [InlineData("2024-03", "2024-03-31", true)]
    [InlineData("2024-03", "2024-04-01", false)]
    [InlineData("before 1950", "1890", true)]
    [InlineData("before 1950", "1951", false)]
    [InlineData("after 1950", "2026", true)]
    [InlineData("after 1950", "1949", false)]
    [InlineData("2019", "../2018", false)]
    [InlineData("2019", "../2020", true)]
    [InlineData("2019", "2018/..", true)]
    [InlineData("2019", "when it rained", false)]
    public void Dates_meet_where_they_overlap(string typed, string recorded, bool meets)
    {
        var dates = Assert.Single(Sought.Read(typed).Parts).Dates!;

        Assert.Equal(meets, dates.Meets(RecordedDate.Read(recorded)));
    }

    [Fact]
    public void A_date_recorded_before_words_were_read_is_read_now_and_nothing_is_no_date()
    {
        var dates = Assert.Single(Sought.Read("2019").Parts).Dates!;

        Assert.True(dates.Meets(new RecordedDate("c. 2021", null, null)));
        Assert.False(dates.Meets(RecordedDate.None));
    }
}
