using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Tests.Dates;

public sealed class DateInWordsTests
{
    [Theory]
    [InlineData("2026-02-14", "14 February 2026")]
    [InlineData("2026-02-02/2026-02-14", "2 to 14 February 2026")]
    [InlineData("2026-01-30/2026-02-14", "30 January to 14 February 2026")]
    [InlineData("2025-12-30/2026-01-02", "30 December 2025 to 2 January 2026")]
    [InlineData("2026-02", "February 2026")]
    [InlineData("2025/2026", "2025 to 2026")]
    [InlineData("1926~", "about 1926")]
    [InlineData("1926?", "possibly 1926")]
    [InlineData("2024-21", "spring 2024")]
    [InlineData("2016-05-XX", "2016-05-XX")]
    [InlineData("../2016", "../2016")]
    [InlineData("the year of the flood", "the year of the flood")]
    public void Reads_as_people_write_it(string text, string words) => Assert.Equal(words, DateInWords.Of(RecordedDate.Read(text)));

    [Fact]
    public void Nothing_known_is_said() => Assert.Equal("not known", DateInWords.Of(RecordedDate.None));
}
