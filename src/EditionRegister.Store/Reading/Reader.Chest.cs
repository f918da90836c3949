using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>A work as a list of works shows it.</summary>
public sealed record ListedTitle(long Id, string? Title, string TitleState, string? Year, string? Technique)
{
    /// <summary>As <see cref="Domain.Works.Work.ShownTitle"/>.</summary>
    public string Shown => TitleState == "untitled" ? "Untitled" : Title ?? "[unknown]";
}

/// <summary>Roots of entries written since, and whether the entry last seen still stands as it was.</summary>
public sealed record WrittenSince(bool Continues, IReadOnlyList<string> Roots);

public sealed partial class Reader
{
    /// <summary>Works without their people, editions and sheets; only those named, or all.</summary>
    public IReadOnlyList<ListedTitle> Titles(IReadOnlyCollection<long>? only = null) => Rows(
        "SELECT id, title, title_state, year, technique FROM work" + Only("id", only), [],
        row => new ListedTitle(row.Figure(0), row.TextOrNull(1), row.Word(2), row.TextOrNull(3), row.TextOrNull(4)));

    /// <summary>The makers of works, the one named first first.</summary>
    public ILookup<long, long> MakersByWork(IReadOnlyCollection<long>? only = null) => Rows(
        $"SELECT work, person FROM work_role{Only("work", only)}{(only is null ? " WHERE" : " AND")} role = @1 ORDER BY work, ordinal, id", [Role.Maker.Word],
        row => (Work: row.Figure(0), Person: row.Figure(1))).ToLookup(role => role.Work, role => role.Person);

    /// <summary>Editions by work, with their numberings but without their numbers.</summary>
    public ILookup<long, Edition> EditionsByWork(IReadOnlyCollection<long>? only = null)
    {
        var which = only is null ? "" : $" WHERE edition IN (SELECT id FROM edition{Only("work", only)})";
        var numberings = Rows(
            $"SELECT edition, id, v, ordinal, kind, notation, size, size_state FROM numbering{which} ORDER BY edition, ordinal", [],
            row => (
                Edition: row.Figure(0),
                Numbering: new Numbering(row.Figure(1), row.Figure(2), Count(row, 3), row.Word(4), row.Word(5), CountOrNull(row, 6), row.Word(7), [])))
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

    /// <summary>What was written after an entry, each root once.</summary>
    public WrittenSince Since(Domain.Documents.LogbookHead seen) => new(
        HeadAt(seen.N) == seen,
        Rows("SELECT DISTINCT root FROM logbook WHERE n > @1", [seen.N], row => row.Word(0)));

    private static string Only(string column, IReadOnlyCollection<long>? ids) => ids is null ? "" : $" WHERE {column} IN ({ChestSheets.Listed(ids)})";
}
