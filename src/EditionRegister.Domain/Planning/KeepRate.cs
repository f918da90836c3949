namespace EditionRegister.Domain.Planning;

/// <summary>
/// The share of sheets that a pass keeps, from what was counted: the share itself, and the interval of Clopper and Pearson around it (exact: each end is
/// the share at which so many or fewer, so many or more, would still come about in one case of 2 × 100/(100 - sure)).
/// </summary>
/// <param name="Kept">Sheets that passes kept.</param>
/// <param name="Of">Sheets that went into them.</param>
/// <param name="Passes">How many passes these were.</param>
public sealed record KeepRate(int Kept, int Of, int Passes)
{
    /// <summary>How sure the interval is, on both sides together.</summary>
    public const double Sure = 0.95;

    private const int FewSheets = 100;
    private const int FewPasses = 5;
    private const int Halvings = 60;

    /// <summary>Exactly as counted.</summary>
    public double Share => (double)Kept / Of;

    public double Lower => Bounds(Kept, Of, Sure).Lower;

    public double Upper => Bounds(Kept, Of, Sure).Upper;

    /// <summary>Too little was counted for the share to be leaned on.</summary>
    public bool IsFew => Of < FewSheets || Passes < FewPasses;

    /// <summary>The exact interval of Clopper and Pearson for <paramref name="k"/> among <paramref name="n"/>, as sure as said on both sides together.</summary>
    public static (double Lower, double Upper) Bounds(int k, int n, double sure)
    {
        var tail = (1 - sure) / 2;

        return (k == 0 ? 0 : Where(p => Binomial.AtLeast(k, n, p) >= tail), k == n ? 1 : Where(p => Binomial.AtMost(k, n, p) <= tail));
    }

    /// <summary>The smallest share that fits; what fits one fits every larger one.</summary>
    private static double Where(Func<double, bool> fits)
    {
        var (low, high) = (0d, 1d);

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = fits(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }
}
