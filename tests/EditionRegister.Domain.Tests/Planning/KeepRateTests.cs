using EditionRegister.Domain.Planning;

namespace EditionRegister.Domain.Tests.Planning;

/// <summary>The exact interval around a counted share, against a handbook's example and Math.NET Numerics.</summary>
public sealed class KeepRateTests
{
    // NIST/SEMATECH e-Handbook of Statistical Methods 7.2.4.2: 4 among 20, exact, two-sided; the ends computed outside this program, to six decimals.
    [Theory]
    [InlineData(0.90, 0.071354, 0.401028)]
    [InlineData(0.95, 0.057334, 0.436614)]
    public void Four_among_twenty(double sure, double lower, double upper)
    {
        var bounds = KeepRate.Bounds(4, 20, sure);

        Assert.Equal(lower, bounds.Lower, 6);
        Assert.Equal(upper, bounds.Upper, 6);
    }

    // Computed outside this program; 1 - 0.025^(1/20).
    [Fact]
    public void None_among_twenty_still_leaves_one_in_six_possible()
    {
        var bounds = KeepRate.Bounds(0, 20, 0.95);

        Assert.Equal(0, bounds.Lower);
        Assert.Equal(0.168433, bounds.Upper, 6);
    }

    [Fact]
    public void All_kept_is_not_taken_for_certain()
    {
        KeepRate rate = new(20, 20, 1);

        Assert.Equal(1, rate.Share);
        Assert.Equal(1, rate.Upper);
        Assert.Equal(1 - 0.168433, rate.Lower, 6);
    }

    // The ends are quantiles of the beta distribution: pL = Beta^-1(tail; k, n - k + 1), pU = Beta^-1(1 - tail; k + 1, n - k).
    [Theory]
    [InlineData(1, 2)]
    [InlineData(35, 36)]
    [InlineData(45, 47)]
    [InlineData(388, 400)]
    [InlineData(7, 1_000)]
    public void Another_library_says_the_same(int kept, int of)
    {
        KeepRate rate = new(kept, of, 9);

        Assert.Equal(MathNet.Numerics.Distributions.Beta.InvCDF(kept, of - kept + 1, 0.025), rate.Lower, 7);
        Assert.Equal(MathNet.Numerics.Distributions.Beta.InvCDF(kept + 1, of - kept, 0.975), rate.Upper, 7);
    }

    [Theory]
    [InlineData(99, 12, true)]
    [InlineData(400, 4, true)]
    [InlineData(100, 5, false)]
    public void Few_sheets_or_few_passes_are_few(int of, int passes, bool isFew) => Assert.Equal(isFew, new KeepRate(of - 1, of, passes).IsFew);
}
