using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>The facts of a deed on a copy of the work, in memory: what declaring and numbering set, and nothing else.</summary>
internal static class RehearsedFacts
{
    /// <summary>The copy as it stands after the deed. What is new has ids below nothing, so that it is never taken for a row.</summary>
    public static Work Of(Work work, Action<Deed> decide)
    {
        var next = 0L;
        Deed deed = new(Root.Work(work.Id), _ => --next);
        decide(deed);
        var numbers = deed.Sets.Where(row => row.Table.Name == "number").ToLookup(row => Figure(row, "numbering"), NumberOf);
        var numberings = deed.Sets.Where(row => row.Table.Name == "numbering").ToLookup(row => Figure(row, "edition"), row => NumberingOf(row, [.. numbers[row.Id]], work.OwnWords));
        var given = deed.Sets.Where(row => row.Table.Name == "impression").ToDictionary(row => row.Id);

        return work with
        {
            Editions = [.. work.Editions, .. deed.Sets.Where(row => row.Table.Name == "edition").Select(row => EditionOf(row, [.. numberings[row.Id]]))],
            Impressions =
            [
                .. work.Impressions.Select(sheet => given.TryGetValue(sheet.Id, out var row)
                    ? sheet with { Numbering = Figure(row, "numbering"), Number = (int?)Figure(row, "number") }
                    : sheet),
            ],
        };
    }

    private static NumberSlot NumberOf(RowFacts row) => new(row.Id, 0, Count(row, "ordinal"), Word(row, "fate"), null);

    private static Numbering NumberingOf(RowFacts row, IReadOnlyList<NumberSlot> numbers, OwnWords own) =>
        new(row.Id, 0, Count(row, "ordinal"), Word(row, "kind"), Word(row, "notation"), (int?)Figure(row, "size"), Word(row, "size_state"), numbers, own.Kind(Word(row, "kind")))
        {
            Name = Value(row, "name").Text,
            Hedge = Value(row, "hedge").Text,
            HedgedSize = (int?)Figure(row, "hedged_size"),
        };

    private static Edition EditionOf(RowFacts row, IReadOnlyList<Numbering> numberings) => new(
        row.Id,
        0,
        Count(row, "ordinal"),
        Word(row, "kind"),
        Word(row, "extent"),
        (int?)Figure(row, "intended"),
        new RecordedDate(Value(row, "declared").Text, Value(row, "declared_earliest").Text, Value(row, "declared_latest").Text) { ReadAs = Value(row, "declared_edtf").Text },
        Word(row, "closed"),
        RecordedDate.None,
        Value(row, "note").Text,
        numberings)
    {
        Printing = Value(row, "printing").Text,
        Rank = Value(row, "rank").Text,
        Statement = Value(row, "statement").Text,
    };

    private static FactValue Value(RowFacts row, string fact) => row.Values.FirstOrDefault(value => value.Fact.Name == fact).Value;

    private static string Word(RowFacts row, string fact) => Value(row, fact).Text ?? "";

    private static long? Figure(RowFacts row, string fact) => Value(row, fact).Number;

    private static int Count(RowFacts row, string fact) => (int)(Figure(row, fact) ?? 0);
}
