using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Tests.Dates;

public sealed class DateSpanTests
{
    [Theory]
    [InlineData("2024", "2025", true, true)]
    [InlineData("2024-05-01", "2024-05-02", true, true)]
    [InlineData("2024-05-01", "2024-05-01", false, false)]
    [InlineData("2024", "2024-05", false, true)]
    [InlineData("2024-05", "2024", false, true)]
    [InlineData("2025", "2024", false, false)]
    [InlineData("2024/..", "2020", false, false)]
    [InlineData("../2024", "2020", false, true)]
    [InlineData("../2024", "2025", true, true)]
    [InlineData("2024/..", "2025", false, true)]
    [InlineData("2024", "../2025", false, true)]
    [InlineData("2024", "2020/..", false, true)]
    [InlineData("XXXX", "2024", false, true)]
    [InlineData("2024", "XXXX", false, true)]
    [InlineData("2016~", "2017", true, true)]
    public void One_date_is_surely_or_possibly_before_another(string first, string second, bool surely, bool possibly)
    {
        Assert.True(Edtf.TryParse(first, out var before));
        Assert.True(Edtf.TryParse(second, out var after));

        Assert.Equal(surely, before.Span.SurelyBefore(after.Span));
        Assert.Equal(possibly, before.Span.PossiblyBefore(after.Span));
    }

    [Fact]
    public void A_span_nobody_set_decides_nothing()
    {
        DateSpan nothing = default;

        Assert.False(nothing.SurelyBefore(nothing));
        Assert.True(nothing.PossiblyBefore(nothing));
    }
}
