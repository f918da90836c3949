namespace EditionRegister.Cli;

/// <summary>Finds the name that was probably meant: at most a third of its letters wrong, missing, too many or swapped.</summary>
internal static class NearestName
{
    public static string? Of(string wrong, IEnumerable<string> names) =>
        (from name in names
         where name.StartsWith('-') == wrong.StartsWith('-')
         let distance = Distance(wrong, name)
         where distance <= Math.Max(1, name.Trim('-').Length / 3)
         orderby distance, name.Length
         select name).FirstOrDefault();

    /// <summary>Optimal string alignment: single letters put in, left out or changed, and neighbours swapped.</summary>
    private static int Distance(string a, string b)
    {
        var cost = new int[a.Length + 1, b.Length + 1];

        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Step(cost, a, b, i, j);
            }
        }

        return cost[a.Length, b.Length];
    }

    private static int Step(int[,] cost, string a, string b, int i, int j)
    {
        var change = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        var best = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
        var swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];

        return swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
    }
}
