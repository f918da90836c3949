using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private OwnWords? _ownWords;

    /// <summary>Kinds and faults that the register made for itself, read once.</summary>
    public OwnWords OwnWords => _ownWords ??= ReadOwnWords();

    /// <summary>The row of a kind, and how many numberings are of it; null where there is no such kind.</summary>
    public (long Id, int Numberings)? KindInUse(string word) => Rows<(long, int)?>(
        "SELECT k.id, (SELECT count(*) FROM numbering m WHERE m.kind = k.word) FROM numbering_kind k WHERE k.word = @1", [word], row => (row.Figure(0), Count(row, 1))).FirstOrDefault();

    private List<Edition> Editions(long work)
    {
        var numbers = RowsBelow(
            "SELECT n.numbering, n.id, n.v, n.ordinal, n.fate, n.note FROM number n JOIN numbering m ON m.id = n.numbering JOIN edition e ON e.id = m.edition WHERE e.work = @1 ORDER BY n.numbering, n.ordinal",
            work,
            row => new NumberSlot(row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.TextOrNull(5)));
        var numberings = RowsBelow(
            $"SELECT m.edition, m.id, m.v, m.ordinal, m.kind, m.notation, m.size, m.size_state, {In(3, "m.name")}, {In(4, "m.hedge")}, {In(4, "m.hedged_size")} FROM numbering m JOIN edition e ON e.id = m.edition WHERE e.work = @1 ORDER BY m.edition, m.ordinal",
            work,
            row => new Numbering(
                row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.Word(5), CountOrNull(row, 6), row.Word(7), numbers[row.Figure(1)], OwnWords.Kind(row.Word(4)))
            {
                Name = row.TextOrNull(8),
                Hedge = row.TextOrNull(9),
                HedgedSize = CountOrNull(row, 10),
            });
        var entitlements = Any("entitlement") ? Entitlements(work) : new RowsBelow<Entitlement>();

        return Rows(
            $"SELECT id, v, ordinal, kind, extent, intended, declared, declared_earliest, declared_latest, closed, closed_on, closed_earliest, closed_latest, note, {In(3, "printing")}, {In(3, "rank")}, {In(3, "stated_total")}, {In(3, "fell_short")}, {In(4, "declared_edtf")}, {In(4, "closed_edtf")}, {In(4, "statement")} FROM edition WHERE work = @1 ORDER BY ordinal",
            [work],
            row => new Edition(
                row.Figure(0), row.Figure(1), Count(row, 2), row.Word(3), row.Word(4), CountOrNull(row, 5), DateAt(row, 6, 18), row.Word(9), DateAt(row, 10, 19),
                row.TextOrNull(13), numberings[row.Figure(0)])
            {
                Printing = row.TextOrNull(14),
                Rank = row.TextOrNull(15),
                StatedTotal = CountOrNull(row, 16),
                FellShort = row.TextOrNull(17),
                Statement = row.TextOrNull(20),
                Entitlements = entitlements[row.Figure(0)],
            });
    }

    private RowsBelow<Entitlement> Entitlements(long work) => RowsBelow(
        $"SELECT m.edition, x.id, x.v, x.numbering, x.first, x.last, x.person, x.agreed, x.agreed_earliest, x.agreed_latest, x.note, {In(4, "x.agreed_edtf")} FROM entitlement x JOIN numbering m ON m.id = x.numbering JOIN edition e ON e.id = m.edition WHERE e.work = @1 ORDER BY m.ordinal, x.first",
        work,
        row => new Entitlement(row.Figure(1), row.Figure(2), row.Figure(3), Count(row, 4), Count(row, 5), row.Figure(6), DateAt(row, 7, 11), row.TextOrNull(10)));

    /// <summary>Those that are not in the program's list; none where the register has no more than that list.</summary>
    private List<Technique> OwnTechniques() => !Has("technique") || Connection.Number("SELECT count(*) FROM technique") <= Technique.All.Count ? [] :
        [.. Rows("SELECT word, name, aat FROM technique ORDER BY id", [], row => new Technique(row.Word(0), row.Word(1)) { Aat = row.TextOrNull(2) ?? "" }).Where(one => Technique.Find(one.Word) is null)];

    private OwnWords ReadOwnWords()
    {
        var kinds = Rows("SELECT word, mark, name, in_size, in_total, for_sale FROM numbering_kind ORDER BY id", [],
            row => NumberingKind.Own(row.Word(0), row.Word(1), row.Word(2), row.Word(3) == "yes", row.Word(4) == "yes", row.Word(5) == "yes"));
        var faults = Rows("SELECT word, name FROM fault ORDER BY id", [], row => new Fault(row.Word(0), row.Word(1)));

        return new OwnWords([.. kinds.Where(kind => !NumberingKind.TryFind(kind.Word, out _))], [.. faults.Where(fault => Fault.Of(fault.Word) is null)])
        {
            Techniques = OwnTechniques(),
            Terms = Any("condition_report") ? [.. ConditionTerms().Where(term => Domain.Conditions.ConditionTerm.Of(term.Word) is null)] : [],
        };
    }
}
