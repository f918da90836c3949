using EditionRegister.Domain.Planning;

namespace EditionRegister.Domain.Tests.Planning;

/// <summary>Sheets to start, against binomial figures computed with another program, and against Math.NET Numerics.</summary>
public sealed class SheetsToStartTests
{
    // Computed outside this program from the binomial distribution (p = s^L); to six decimals.
    [Theory]
    [InlineData(23, 0.732933)]
    [InlineData(24, 0.866990)]
    [InlineData(25, 0.940801)]
    [InlineData(26, 0.976079)]
    public void Twenty_good_through_four_passes_that_keep_97_in_100(int sheets, double probability) =>
        Assert.Equal(probability, Binomial.AtLeast(20, sheets, Math.Pow(0.97, 4)), 6);

    // Computed outside this program; the rule of thumb ceil(20 / p) = 23 gives only 73 %.
    [Theory]
    [InlineData(20, 4, 0.97, 0.95, 26)]
    [InlineData(20, 4, 0.95, 0.95, 29)]
    [InlineData(25, 6, 0.97, 0.95, 34)]
    [InlineData(50, 5, 0.97, 0.95, 64)]
    [InlineData(30, 8, 0.98, 0.95, 40)]
    [InlineData(10, 1, 0.97, 0.95, 11)]
    [InlineData(10, 1, 0.9, 0.9, 13)]
    public void The_smallest_number_that_is_sure_enough(int good, int passes, double keep, double sure, int start)
    {
        var plan = SheetsToStart.Of(good, passes, keep, sure);

        Assert.Equal(start, plan.Start);
        Assert.True(Binomial.AtLeast(good, start - 1, plan.Through) < sure);
    }

    // 0.97^4 = 0.9409^2 = 0.88529281, by hand.
    [Fact]
    public void What_comes_through_is_the_keep_rate_as_often_as_there_are_passes() =>
        Assert.Equal(0.88529281, SheetsToStart.Of(20, 4, 0.97, 0.95).Through, 12);

    // The trade's rule, 3 % more for each run through the press (a course quoted in a forum of letterpress printers): 3 % x 4 x 20 = 2.4, so 23 sheets.
    [Fact]
    public void The_trades_three_per_cent_a_pass_is_enough_in_three_cases_of_four_only() =>
        Assert.Equal(0.73, Binomial.AtLeast(20, 23, Math.Pow(0.97, 4)), 2);

    [Fact]
    public void The_rows_lead_up_to_the_answer_and_one_past_it() =>
        Assert.Equal([23, 24, 25, 26, 27], SheetsToStart.Of(20, 4, 0.97, 0.95).Rows.Select(row => row.Sheets));

    [Fact]
    public void Where_nothing_is_lost_as_many_are_started_as_are_wanted() => Assert.Equal(20, SheetsToStart.Of(20, 9, 1, 0.99).Start);

    // Cumulative binomial values as tables of statistics have them; computed outside this program, to four decimals.
    [Theory]
    [InlineData(10, 0.1, new[] { .3487, .7361, .9298, .9872 })]
    [InlineData(20, 0.2, new[] { .0115, .0692, .2061, .4114, .6296, .8042 })]
    [InlineData(20, 0.05, new[] { .3585, .7358, .9245, .9841 })]
    public void Cumulative_probabilities_are_those_of_the_tables(int n, double p, double[] atMost) =>
        Assert.All(atMost.Select((value, k) => (value, k)), row => Assert.Equal(row.value, Binomial.AtMost(row.k, n, p), 4));

    [Theory]
    [InlineData(1, 0.5)]
    [InlineData(12, 0.97)]
    [InlineData(40, 0.3)]
    [InlineData(250, 0.885)]
    [InlineData(2_000, 0.02)]
    public void Another_library_says_the_same(int n, double p) => Assert.All(Enumerable.Range(0, n), k =>
    {
        Assert.Equal(MathNet.Numerics.Distributions.Binomial.CDF(p, n, k), Binomial.AtMost(k, n, p), 9);
        Assert.Equal(1, Binomial.AtMost(k, n, p) + Binomial.AtLeast(k + 1, n, p), 12);
    });
}
