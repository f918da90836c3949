using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>A work as a list of works shows it.</summary>
public sealed record ListedTitle(long Id, string? Title, string TitleState, string? Year, string? Technique)
{
    /// <summary>The year with the days it can mean.</summary>
    public RecordedDate Dated { get; init; } = RecordedDate.None;

    /// <summary>The techniques by their words: as they were read when it was recorded, else as its text reads now.</summary>
    public IReadOnlyList<string> Techniques { get; init; } = [];

    /// <summary>As <see cref="Domain.Works.Work.ShownTitle"/>.</summary>
    public string Shown => TitleState == "untitled" ? "Untitled" : Title ?? "[unknown]";
}

/// <summary>Roots of entries written since, and whether the entry last seen still stands as it was.</summary>
public sealed record WrittenSince(bool Continues, IReadOnlyList<string> Roots);

public sealed partial class Reader
{
    /// <summary>Works without their people, editions and sheets; only those named, or all.</summary>
    public IReadOnlyList<ListedTitle> Titles(IReadOnlyCollection<long>? only = null)
    {
        var stored = Any("work_technique")
            ? Rows($"SELECT work, technique FROM work_technique{Only("work", only)} ORDER BY work, ordinal, id", [], row => (Work: row.Figure(0), Word: row.Word(1))).ToLookup(one => one.Work, one => one.Word)
            : null;
        // Most works are in one of a few techniques, written alike.
        Dictionary<string, IReadOnlyList<string>> read = new(StringComparer.Ordinal);

        return Rows("SELECT id, title, title_state, technique, year, year_earliest, year_latest FROM work" + Only("id", only), [], row =>
        {
            var technique = row.TextOrNull(3);
            var dated = DateAt(row, 4);

            return new ListedTitle(row.Figure(0), row.TextOrNull(1), row.Word(2), dated.Text, technique)
            {
                Dated = dated,
                Techniques = stored?[row.Figure(0)].ToList() is { Count: > 0 } known ? known : technique is null ? [] : TechniquesIn(technique, read),
            };
        });
    }

    /// <summary>The makers of works, the one named first first.</summary>
    public ILookup<long, long> MakersByWork(IReadOnlyCollection<long>? only = null) => Rows(
        $"SELECT work, person FROM work_role{Only("work", only)}{(only is null ? " WHERE" : " AND")} role = @1 ORDER BY work, ordinal, id", [Role.Maker.Word],
        row => (Work: row.Figure(0), Person: row.Figure(1))).ToLookup(role => role.Work, role => role.Person);

    /// <summary>Editions by work, with their numberings but without their numbers.</summary>
    public ILookup<long, Edition> EditionsByWork(IReadOnlyCollection<long>? only = null)
    {
        var which = only is null ? "" : $" WHERE edition IN (SELECT id FROM edition{Only("work", only)})";
        var numberings = Rows(
            $"SELECT edition, id, v, ordinal, kind, notation, size, size_state, {In(4, "hedged_size")}, {In(4, "hedge")} FROM numbering{which} ORDER BY edition, ordinal", [],
            row => (
                Edition: row.Figure(0),
                Numbering: new Numbering(row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.Word(5), CountOrNull(row, 6), row.Word(7), [], OwnWords.Kind(row.Word(4))) { HedgedSize = CountOrNull(row, 8), Hedge = row.TextOrNull(9) }))
            .ToLookup(one => one.Edition, one => one.Numbering);

        return Rows(
            $"SELECT work, id, v, ordinal, kind, extent, intended, declared, declared_earliest, declared_latest, closed, closed_on, closed_earliest, closed_latest, note FROM edition{Only("work", only)} ORDER BY work, ordinal", [],
            row => (
                Work: row.Figure(0),
                Edition: new Edition(
                    row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.Word(5), CountOrNull(row, 6), DateAt(row, 7), row.Word(10), DateAt(row, 11),
                    row.TextOrNull(14), [.. numberings[row.Figure(1)]])))
            .ToLookup(one => one.Work, one => one.Edition);
    }

    /// <summary>The numbers that are known of numberings without a size, and of editions that are not wholly here: of the others every number up to the size is.</summary>
    public ILookup<long, int> KnownNumbers(IReadOnlyCollection<long>? only = null) => Rows(
        $"SELECT n.numbering, n.ordinal FROM edition e JOIN numbering m ON m.edition = e.id JOIN number n ON n.numbering = m.id{Only("e.work", only)}{(only is null ? " WHERE" : " AND")} (e.extent <> 'whole' OR m.size IS NULL) ORDER BY n.numbering, n.ordinal", [],
        row => (Numbering: row.Figure(0), Ordinal: Count(row, 1))).ToLookup(one => one.Numbering, one => one.Ordinal);

    /// <summary>Print runs with the days they were printed on.</summary>
    public IReadOnlyList<ChestRun> ChestRuns(IReadOnlyCollection<long>? only = null) => Rows(
        "SELECT id, work, printed, printed_earliest, printed_latest FROM print_run" + Only("work", only), [],
        row => new ChestRun(row.Figure(0), row.Figure(1), DaysThere.Of(DateAt(row, 2))));

    /// <summary>What was written after an entry, each root once.</summary>
    public WrittenSince Since(Domain.Documents.LogbookHead seen) => new(
        HeadAt(seen.N) == seen,
        Rows("SELECT DISTINCT root FROM logbook WHERE n > @1", [seen.N], row => row.Word(0)));

    private static IReadOnlyList<string> TechniquesIn(string text, Dictionary<string, IReadOnlyList<string>> read)
    {
        if (!read.TryGetValue(text, out var words))
        {
            read.Add(text, words = [.. TechniqueReader.Read(text).Techniques.Select(technique => technique.Word)]);
        }

        return words;
    }

    private static string Only(string column, IReadOnlyCollection<long>? ids) => ids is null ? "" : $" WHERE {column} IN ({ChestSheets.Listed(ids)})";
}
