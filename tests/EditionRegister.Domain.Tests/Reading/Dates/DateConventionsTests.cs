using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

public sealed class DateConventionsTests
{
    public static TheoryData<string, string> Lines { get; } = new(DateConventions.All.Select(line => (line.Written, line.Read)));

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_line_of_the_table_is_read_as_it_says(string written, string words)
    {
        Assert.Equal(words, ReadDateInWords.Of(DateReader.Read(written)!, written));
    }

    [Fact]
    public void Every_line_of_the_table_has_its_reason_and_stands_once()
    {
        Assert.All(DateConventions.All, line => Assert.EndsWith(".", line.Why, StringComparison.Ordinal));
        Assert.Equal(DateConventions.All.Count, DateConventions.All.Select(line => line.Written).Distinct().Count());
    }

    [Fact]
    public void The_form_shown_is_made_of_dates_that_are_read()
    {
        var examples = DateReader.Form.Replace(", printed", " printed", StringComparison.Ordinal).Split([", ", " or "], StringSplitOptions.None);

        Assert.Equal(10, examples.Length);
        Assert.All(examples, example => Assert.NotNull(DateReader.Read(example)));
    }
}
