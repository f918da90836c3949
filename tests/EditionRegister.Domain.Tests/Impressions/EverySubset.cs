namespace EditionRegister.Domain.Tests.Impressions;

/// <summary>The second opinion on a proposal: all subsets of a size around all middles.</summary>
internal static class EverySubset
{
    public static int Cost(int[] marks, int[] middle) => marks.Sum(mark => 5 - mark) + marks.Zip(middle, (mark, other) => Math.Abs(mark - other)).Sum();

    /// <summary>Places from one, and what they cost.</summary>
    public static (IReadOnlyList<int> Places, int Costs) Cheapest(int[][] marks, int keep)
    {
        var (best, least) = ((IReadOnlyList<int>)[], int.MaxValue);

        foreach (var middle in marks)
        {
            int[] costs = [.. marks.Select(one => Cost(one, middle))];

            foreach (var subset in Subsets(marks.Length, keep))
            {
                if (subset.Sum(at => costs[at]) is var cost && cost < least)
                {
                    (best, least) = ([.. subset.Select(at => at + 1)], cost);
                }
            }
        }

        return (best, least);
    }

    /// <summary>In the order of the pile: 0 1 2, 0 1 3, and on.</summary>
    private static IEnumerable<int[]> Subsets(int of, int size, int from = 0)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (var first = from; first <= of - size; first++)
        {
            foreach (var rest in Subsets(of, size - 1, first + 1))
            {
                yield return [first, .. rest];
            }
        }
    }
}
