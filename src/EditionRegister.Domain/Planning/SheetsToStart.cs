namespace EditionRegister.Domain.Planning;

/// <summary>
/// How many sheets to start so that enough of them come out good. A sheet is good when every pass keeps it, p = s^passes, each sheet on its own; so the
/// good ones among n are binomially distributed, and the answer is the smallest n with P(at least so many good) as sure as wanted.
/// </summary>
public sealed record SheetsToStart
{
    private const int Most = 99_999;
    private const int RowsBefore = 3;

    private SheetsToStart(int good, int passes, double keep, double sure, int start)
    {
        Good = good;
        Passes = passes;
        Keep = keep;
        Sure = sure;
        Start = start;
    }

    /// <summary>Good sheets wanted.</summary>
    public int Good { get; }

    public int Passes { get; }

    /// <summary>The share of sheets that one pass keeps, above 0 and at most 1.</summary>
    public double Keep { get; }

    /// <summary>How sure it is to be, between 0 and 1.</summary>
    public double Sure { get; }

    /// <summary>Sheets to start.</summary>
    public int Start { get; }

    /// <summary>The share of sheets that come through all passes.</summary>
    public double Through => Math.Pow(Keep, Passes);

    /// <summary>Sheets started against the probability of enough good ones: a few before the answer, the answer, and one more.</summary>
    public IReadOnlyList<(int Sheets, double Probability)> Rows =>
        [.. Enumerable.Range(Math.Max(Good, Start - RowsBefore), Start + 2 - Math.Max(Good, Start - RowsBefore)).Select(n => (n, Binomial.AtLeast(Good, n, Through)))];

    /// <exception cref="RefusedException">plan-impossible: more sheets than a register counts, or shares that are none.</exception>
    public static SheetsToStart Of(int good, int passes, double keep, double sure)
    {
        if (good is < 1 or > Most || passes is < 1 or > Most || !(keep is > 0 and <= 1) || !(sure is > 0 and < 1))
        {
            throw PlanRefusals.OutOfBounds();
        }

        var through = Math.Pow(keep, passes);
        var (low, high) = (good, good);

        while (Binomial.AtLeast(good, high, through) < sure)
        {
            (low, high) = (high + 1, high * 2);

            if (high > Most * 2)
            {
                throw PlanRefusals.TooMany(good, passes);
            }
        }

        // The more sheets are started, the surer it is: so the smallest number lies where halving ends.
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = Binomial.AtLeast(good, middle, through) >= sure ? (low, middle) : (middle + 1, high);
        }

        return low > Most ? throw PlanRefusals.TooMany(good, passes) : new SheetsToStart(good, passes, keep, sure, low);
    }
}
