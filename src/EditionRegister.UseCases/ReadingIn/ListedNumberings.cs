using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>The numberings that the rows of one edition speak of: by the numbers they list, by the size they name, and by the proofs they state beside it.</summary>
internal static class ListedNumberings
{
    private static readonly (NumberingKind Kind, Notation Notation) Regular = (NumberingKind.Numbered, Notation.Arabic);

    /// <param name="rows">The rows of one edition.</param>
    /// <param name="sizes">The sizes they name for it.</param>
    public static IReadOnlyList<ListedNumbering> Of(IReadOnlyList<ReadRow> rows, IReadOnlyList<int> sizes)
    {
        var groups = rows.GroupBy(row => (Kind: row.Number?.Kind ?? NumberingKind.Numbered, Notation: row.Number?.Notation ?? Notation.Arabic)).ToList();
        var beside = rows.SelectMany(row => row.Beside).DistinctBy(plan => plan.Kind).ToList();
        var itself = Itself(rows, sizes, []);

        // A size is said of the edition itself, also where only its proofs are listed.
        return
        [
            .. groups.TrueForAll(group => group.Key != Regular) && (itself.SizeState != "unknown" || itself.Hedge is not null) ? [new ListedNumbering(itself, [])] : (ListedNumbering[])[],
            .. groups.Select(group => Listed(group.Key, [.. group], rows, sizes, groups.Count(other => other.Key.Kind == group.Key.Kind) == 1 ? beside : []))
                .Concat(beside.Where(plan => groups.TrueForAll(group => group.Key.Kind != plan.Kind)).Select(plan => new ListedNumbering(plan, [])))
                .OrderBy(numbering => numbering.Kind.IsOwn ? NumberingKind.All.Count : NumberingKind.All.ToList().IndexOf(numbering.Kind)).ThenBy(numbering => numbering.Kind.Word, StringComparer.Ordinal),
        ];
    }

    private static ListedNumbering Listed((NumberingKind Kind, Notation Notation) key, IReadOnlyList<ReadRow> rows, IReadOnlyList<ReadRow> all, IReadOnlyList<int> sizes, List<NumberingPlan> beside)
    {
        if (key == Regular)
        {
            return new ListedNumbering(Itself(all, sizes, rows), rows);
        }

        var size = Usual(rows) ?? beside.Find(plan => plan.Kind == key.Kind)?.Size ?? (key.Kind == NumberingKind.BonATirer ? 1 : (int?)null);

        return new ListedNumbering(WithHedge(new NumberingPlan(key.Kind, key.Notation, size, size is not null ? "stated" : "unknown"), rows), rows);
    }

    private static NumberingPlan Itself(IReadOnlyList<ReadRow> all, IReadOnlyList<int> sizes, IReadOnlyList<ReadRow> rows)
    {
        var size = sizes.Count > 0 ? sizes[0] : Usual(rows);
        NumberingPlan plan = new(Regular.Kind, Regular.Notation, size, size is not null ? "stated" : all.Any(row => row.EditionIsOpen) ? "open" : "unknown");
        var said = all.FirstOrDefault(row => row.EditionHedge is not null);

        return plan.SizeState == "unknown" && said is not null ? plan with { Hedge = said.EditionHedge, HedgedSize = said.EditionHedgedSize } : WithHedge(plan, rows);
    }

    private static NumberingPlan WithHedge(NumberingPlan plan, IReadOnlyList<ReadRow> rows) =>
        plan.SizeState == "unknown" && rows.FirstOrDefault(row => row.NumberHedge is not null) is { } said ? plan with { Hedge = said.NumberHedge, HedgedSize = said.NumberHedgedSize } : plan;

    /// <summary>The size that most rows have behind their number.</summary>
    private static int? Usual(IReadOnlyList<ReadRow> rows) =>
        rows.Select(row => row.Number?.Of).OfType<int>().GroupBy(of => of).OrderByDescending(same => same.Count()).ThenBy(same => same.Key).Select(same => (int?)same.Key).FirstOrDefault();
}
