using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>A sheet proposed to be kept: what it costs, and how much of it nobody looked at.</summary>
/// <param name="Sheet">The impression.</param>
/// <param name="Lacks">What its marks are short of the best, all of them together.</param>
/// <param name="Differs">How far its marks are from those of the sheet in the middle; what nobody looked at differs in nothing.</param>
/// <param name="NotLooked">How many of the five aspects have no mark.</param>
public sealed record ProposedSheet(Impression Sheet, int Lacks, int Differs, int NotLooked)
{
    public bool IsFullyGraded => NotLooked == 0;

    public int Costs => Lacks + Differs;
}

/// <summary>
/// The sheets of a pile that are cleanest and most alike, worked out from their marks; it decides nothing.
/// A sheet lacks what its five marks are short of 5, and differs from another by the differences of their marks, aspect by aspect. Around each
/// fully graded sheet as the middle, a sheet costs what it lacks and what it differs; the n that cost least are taken, and of all middles the one
/// whose n cost least together wins. That is exact: no other middle and no other n sheets cost less. What costs the same goes by the order of
/// the pile. Sheets with an aspect nobody looked at come after all fully graded ones, those that lack least in what was looked at first.
/// </summary>
/// <param name="Sheets">Those proposed, in the order of the pile.</param>
/// <param name="Others">Those that could have been proposed and are not, in the order of the pile.</param>
/// <param name="Middle">The sheet they are most alike to; null where none is fully graded.</param>
public sealed record Proposal(IReadOnlyList<ProposedSheet> Sheets, IReadOnlyList<ProposedSheet> Others, Impression? Middle)
{
    private static readonly int Aspects = GradeAspect.All.Count;

    /// <summary>What the fully graded ones cost together.</summary>
    public int Costs => Sheets.Where(sheet => sheet.IsFullyGraded).Sum(sheet => sheet.Costs);

    public int NotFullyGraded => Sheets.Count(sheet => !sheet.IsFullyGraded);

    /// <summary>Sheets of a run that may still be kept: pulled, kept or spare, without a number; in the order of the pile.</summary>
    public static IReadOnlyList<Impression> Candidates(Work work, PrintRun run) =>
        [.. work.Impressions.Where(sheet => sheet.Run == run.Id && sheet is { Number: null, Standing: "pulled" or "kept" or "spare" }).OrderBy(sheet => sheet.Ordinal)];

    /// <param name="work">The work whole.</param>
    /// <param name="run">The print run whose pile it is.</param>
    /// <param name="keep">How many are wanted, one or more.</param>
    /// <exception cref="RefusedException">proposal-too-few or proposal-nothing-graded.</exception>
    public static Proposal Of(Work work, PrintRun run, int keep)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(keep, 1);

        var pile = Candidates(work, run);

        return pile.Count < keep ? throw GradingRefusals.TooFew(work, run, keep, pile.Count)
            : pile.All(sheet => Marks(sheet).All(mark => mark is null)) ? throw GradingRefusals.NothingGraded(work, run)
            : Of(pile, keep);
    }

    /// <summary>The proposal from sheets in the order of the pile, of which there must be enough.</summary>
    public static Proposal Of(IReadOnlyList<Impression> pile, int keep)
    {
        var full = pile.Select(sheet => new Placed(sheet, Marks(sheet))).Where(one => one.IsFull).ToList();
        var middle = full.Count == 0 ? null : MiddleOf(full, Math.Min(keep, full.Count));
        var ranked = pile.Select((sheet, at) => (At: at, Proposed: Proposed(sheet, middle)))
            .OrderBy(one => !one.Proposed.IsFullyGraded)
            .ThenBy(one => one.Proposed.IsFullyGraded ? one.Proposed.Costs : one.Proposed.Lacks)
            .ThenBy(one => one.At)
            .ToList();

        return new Proposal(AsPiled(ranked.Take(keep)), AsPiled(ranked.Skip(keep)), middle?.Sheet);
    }

    private static IReadOnlyList<ProposedSheet> AsPiled(IEnumerable<(int At, ProposedSheet Proposed)> ranked) => [.. ranked.OrderBy(one => one.At).Select(one => one.Proposed)];

    private static ProposedSheet Proposed(Impression sheet, Placed? middle)
    {
        var marks = Marks(sheet);

        return new ProposedSheet(sheet, Lack(marks), middle is null ? 0 : Difference(marks, middle.Marks), marks.Count(mark => mark is null));
    }

    /// <summary>The first of the pile around which so many sheets cost least. Sheets with the same marks cost the same, so each kind of marks is looked at once.</summary>
    private static Placed MiddleOf(List<Placed> full, int keep)
    {
        var kinds = full.GroupBy(one => Key(one.Marks)).Select(same => (First: same.First(), Count: same.Count(), Lacks: Lack(same.First().Marks))).ToList();
        var (best, least) = (kinds[0].First, int.MaxValue);

        foreach (var middle in kinds)
        {
            // A cost is 40 at most: five marks that lack 4 and differ by 4.
            var byCost = new int[(2 * Aspects * (GradeAspect.Best - GradeAspect.Poorest)) + 1];

            foreach (var kind in kinds)
            {
                byCost[kind.Lacks + Difference(kind.First.Marks, middle.First.Marks)] += kind.Count;
            }

            if (Cheapest(byCost, keep) is var cost && cost < least)
            {
                (best, least) = (middle.First, cost);
            }
        }

        return best;
    }

    private static int Cheapest(int[] byCost, int keep)
    {
        var (sum, left) = (0, keep);

        for (var cost = 0; left > 0; cost++)
        {
            var taken = Math.Min(left, byCost[cost]);
            (sum, left) = (sum + (taken * cost), left - taken);
        }

        return sum;
    }

    private static int?[] Marks(Impression sheet) => [.. GradeAspect.All.Select(aspect => aspect.MarkOf(sheet.Grade))];

    private static string Key(int?[] marks) => string.Join(',', marks);

    private static int Lack(int?[] marks) => marks.Sum(mark => mark is { } known ? GradeAspect.Best - known : 0);

    private static int Difference(int?[] marks, int?[] others) => marks.Zip(others, (mark, other) => mark is { } one && other is { } two ? Math.Abs(one - two) : 0).Sum();

    private sealed record Placed(Impression Sheet, int?[] Marks)
    {
        public bool IsFull => Marks.All(mark => mark is not null);
    }
}
