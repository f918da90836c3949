namespace EditionRegister.Domain.Planning;

/// <summary>Probabilities of so many good ones among n, each good on its own with the same probability.</summary>
public static class Binomial
{
    /// <summary>P(X ≥ k) among <paramref name="n"/>, each with probability <paramref name="p"/>.</summary>
    public static double AtLeast(int k, int n, double p)
    {
        if (k <= 0 || p >= 1)
        {
            return k <= n ? 1 : 0;
        }

        return k > n || p <= 0 ? 0
            : k > n * p ? Math.Min(1, Up(k, n, p))
            : Math.Max(0, 1 - AtMost(k - 1, n, p));
    }

    /// <summary>P(X ≤ k) among <paramref name="n"/>, each with probability <paramref name="p"/>.</summary>
    public static double AtMost(int k, int n, double p) =>
        // So many that are not good is what is left when so many are.
        k < 0 ? 0 : k >= n ? 1 : n - k > n * (1 - p) ? Math.Min(1, Up(n - k, n, 1 - p)) : Math.Max(0, 1 - Up(k + 1, n, p));

    // Terms from k upwards, each from the one before; the first by logarithms, since it may be far below what a double holds.
    private static double Up(int k, int n, double p)
    {
        if (p <= 0 || p >= 1)
        {
            return p >= 1 || k == 0 ? 1 : 0;
        }

        var term = Math.Exp(LogTerm(k, n, p));
        var sum = term;

        for (var i = k; i < n; i++)
        {
            term *= (n - i) / (i + 1d) * (p / (1 - p));
            sum += term;

            if (term < sum * 1e-17 && i > n * p)
            {
                break;
            }
        }

        return sum;
    }

    private static double LogTerm(int k, int n, double p)
    {
        var log = (k * Math.Log(p)) + ((n - k) * Math.Log(1 - p));

        for (var i = 1; i <= Math.Min(k, n - k); i++)
        {
            log += Math.Log((n - i + 1d) / i);
        }

        return log;
    }
}
