using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Lists;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Integrity;

/// <summary>Every value that no row can be without, taken away in turn: what is left is read and told, and nothing throws.</summary>
public sealed class MissingValuesTests(TamperingTests.Once once) : IClassFixture<TamperingTests.Once>
{
    private readonly TamperedFile _file = once.File;

    /// <summary>Columns whose rows a work's rules see, where a blank is a word or code missing.</summary>
    private static readonly string[] Words =
    [
        "work.title_state", "work.maker_state", "work_role.role", "matrix.what", "matrix.reduction", "matrix.fate", "print_run.purpose",
        "edition.kind", "edition.extent", "edition.closed", "numbering.kind", "numbering.notation", "numbering.size_state", "number.fate",
        "impression.code", "impression.standing", "impression.signed", "impression.for_sale", "inscription.side", "inscription.manner",
        "whereabouts.kind", "whereabouts.to_state", "ownership.kind", "ownership.to_state", "document.kind", "document.serial", "document.standing",
    ];

    [Fact]
    public void Check_and_every_reading_live_with_any_value_missing()
    {
        List<string> wrong = [];
        var columns = NeverBlank();

        foreach (var (table, column) in columns)
        {
            foreach (var rows in new[] { "rowid = (SELECT min(rowid) FROM {0})", "true" })
            {
                if (!TakeAway(table, column, string.Format(System.Globalization.CultureInfo.InvariantCulture, rows, table)))
                {
                    continue;
                }

                var findings = _file.Store.Check(ByRules).ToList();
                wrong.AddRange(findings.Where(finding => finding.Message.Contains("broke off", StringComparison.Ordinal)).Select(finding => $"{table}.{column}: {finding.Message}"));

                if (findings.Count == 0)
                {
                    wrong.Add($"{table}.{column}: nothing found");
                }

                wrong.AddRange(Readings().Where(reading => Throws(reading.Value)).Select(reading => $"{table}.{column}: {reading.Key}"));
            }
        }

        Assert.Empty(wrong);
        Assert.Empty(Words.Except(columns.Select(column => $"{column.Table}.{column.Column}")));
    }

    [Fact]
    public void A_word_that_is_missing_is_named_as_missing()
    {
        List<string> silent = [];

        foreach (var word in Words)
        {
            var (table, column) = (word.Split('.')[0], word.Split('.')[1]);
            Assert.True(TakeAway(table, column, "true") || TakeAway(table, column, $"rowid = (SELECT min(rowid) FROM {table})"), word);

            if (!_file.Store.Check(ByRules).Any(finding => finding.Rule == "ValuesAreReadable" && finding.Message.EndsWith(" is missing.", StringComparison.Ordinal)))
            {
                silent.Add(word);
            }
        }

        Assert.Empty(silent);
    }

    private static IEnumerable<Finding> ByRules(Reader reader) => reader.Works().SelectMany(work => Rules.All.SelectMany(rule => rule.Check(work)));

    private List<(string Table, string Column)> NeverBlank()
    {
        _file.Reset();
        using SqliteConnection connection = new($"Data Source={_file.Database};Pooling=False");
        connection.Open();

        return [.. _file.Tables
            .Where(table => table != "sealed")
            .SelectMany(table => Dump.Column(connection, $"SELECT name FROM pragma_table_info('{table}') WHERE \"notnull\" AND NOT pk").Select(column => (table, column)))];
    }

    /// <summary>False where even the loosened table keeps the value, as one that an index holds apart from others.</summary>
    private bool TakeAway(string table, string column, string rows)
    {
        using var connection = _file.OpenLoose();

        try
        {
            if (connection.Run($"UPDATE {table} SET {column} = NULL WHERE {rows}") == 0)
            {
                return false;
            }
        }
        catch (SqliteException refused) when (refused.SqliteErrorCode == 19)
        {
            return false;
        }

        _file.Hide(connection);

        return true;
    }

    private Dictionary<string, Action<Reader>> Readings()
    {
        // Not IS NOT NULL: SQLite believes the schema, and leaves that question out where a column is said never to be blank.
        var codes = Texts("SELECT code FROM impression WHERE code <> '' LIMIT 3");
        var titles = Texts("SELECT search FROM work WHERE search <> '' LIMIT 3");
        var sha = Texts("SELECT sha256 FROM batch WHERE sha256 <> '' LIMIT 1");

        return new(StringComparer.Ordinal)
        {
            ["works"] = reader => Assert.All(reader.Works(), work => Assert.All(work.Impressions, sheet => Assert.NotNull(work.NumberOf(sheet) + work.ShownMaker + work.ShownTitle))),
            ["list"] = reader => Assert.All(ImpressionList.Piled(reader, new ImpressionFilter { Sought = Sought.Read("a"), PlaceId = 1, MakerIds = [1] }, 0, 9).Page.Concat(ImpressionList.Piled(reader, new ImpressionFilter(), 0, 9_999).Page), place => Assert.NotEqual(0, place.Work)),
            ["list of what is read"] = reader => Assert.All(new[] { "A/P 2", "A/P", "3/12", "c. 2026", "linocut" }.SelectMany(text => ImpressionList.Piled(reader, new ImpressionFilter { Sought = Sought.Read(text) }, 0, 9).Page), place => Assert.NotEqual(0, place.Work)),
            ["titles of works"] = reader => Assert.All(reader.Titles(), title => Assert.NotNull(title.Shown)),
            ["makers of works"] = reader => Assert.NotNull(reader.MakersByWork([1, 2, 3])),
            ["editions of works"] = reader => Assert.All(reader.EditionsByWork().SelectMany(editions => editions), edition => Assert.NotNull(edition.Kind)),
            ["sheets in the chest"] = reader => Assert.All(new[] { ChestSheets.Read(reader, null), ChestSheets.Read(reader, [1, 2, 3]) }, sheets => Assert.True(sheets.Count <= sheets.Work.Length)),
            ["numbers known"] = reader => Assert.NotNull(reader.KnownNumbers([1, 2, 3])),
            ["written since"] = reader => Assert.NotNull(reader.Since(reader.HeadAt(1)).Roots),
            ["entries down"] = reader => Assert.All(reader.EntriesDown(long.MaxValue).Concat(reader.EntriesDown(99, ["work/1"], 1)), entry => Assert.NotNull(entry.Deed)),
            ["entries up"] = reader => Assert.All(reader.EntriesUp(1), entry => Assert.NotNull(reader.FactsOf(entry.N))),
            ["entries of a day"] = reader => Assert.True(reader.FirstEntryOn(new DateOnly(2026, 1, 1)) > 0),
            ["unbroken"] = reader => Assert.True(reader.Unbroken().Entries >= 0),
            ["batch names"] = reader => Assert.NotNull(reader.Batches()),
            ["kept"] = reader => Assert.All(reader.Having(1, 99).First.Concat(reader.Owning(1, 99).First).Concat(reader.LyingIn([1, 2, 3], 99).First), sheet => Assert.NotNull(sheet.Number + sheet.Title)),
            ["counts"] = reader => Assert.NotNull(new[] { reader.HavingCounts(), reader.OwningCounts([1, 2]), reader.LyingCounts(), reader.WorkCounts(), reader.PlaceUses() }),
            ["roles of"] = reader => Assert.All(reader.RolesOf(1), role => Assert.NotNull(role.Role + role.Title)),
            ["suggestions"] = reader => Assert.NotNull(reader.Papers().Concat(reader.RunStates()).Concat(reader.Techniques()).Concat(reader.Materials()).ToList()),
            ["book"] = reader => Assert.All(reader.Book.Places.Keys, place => Assert.NotNull(reader.Book.PathOf(place))),
            ["head"] = reader => Assert.NotEqual(default, reader.Head),
            ["head at"] = reader => Assert.NotEqual(default, reader.HeadAt(2)),
            ["newest entries"] = reader => Assert.NotEmpty(reader.NewestEntries(100_000)),
            ["entries of"] = reader => Assert.NotNull(reader.EntriesOf(Root.Work(1).ToString())),
            ["entry"] = reader => Assert.NotNull(reader.Entry(2)),
            ["codes"] = reader => Assert.All(codes, code => Assert.True(reader.FindCode(code) is not { } found || reader.Work(found.Work) is not null)),
            ["codes ever given"] = reader => Assert.All(codes, code => Assert.True(reader.CodeWasEverGiven(code) || reader.SheetOfCode(code) is null)),
            ["titles"] = reader => Assert.All(titles, title => Assert.NotNull(reader.WorksTitled(title))),
            ["editions' work"] = reader => Assert.All(Enumerable.Range(1, 4), edition => Assert.True(reader.EditionsWork(edition) is not < 0)),
            ["batches"] = reader => Assert.All(sha, hash => Assert.True(reader.BatchOf(hash) is not < 0)),
            ["batch"] = reader => Assert.Null(reader.StandingBatch(99_999)),
            ["shows"] = reader => Assert.All(reader.Shows(), show => Assert.NotNull(reader.Show(show.Id)?.ShownName + string.Concat(reader.WorksShownIn(show.Id)))),
            ["listings"] = reader => Assert.True(reader.ShowListing(1) is not { Show: < 0 }),
            ["acceptances"] = reader => Assert.All(reader.Acceptances(), one => Assert.NotEqual("", one.Value.Reason)),
            ["demo"] = reader => Assert.False(reader.IsDemo()),
            ["pointers"] = reader => Assert.NotNull(reader.PointedAtFromOutside(new HashSet<RowName> { new("person", 1), new("place", 1), new("work", 1), new("impression", 1) })),
        };
    }

    private List<string> Texts(string sql)
    {
        using SqliteConnection connection = new($"Data Source={_file.Database};Mode=ReadOnly;Pooling=False");
        connection.Open();

        return Dump.Column(connection, sql);
    }

    private bool Throws(Action<Reader> reading)
    {
        try
        {
            _file.Store.Read(reader =>
            {
                reading(reader);

                return true;
            });

            return false;
        }
        catch (Exception thrown) when (thrown is InvalidOperationException or InvalidCastException or NullReferenceException or ArgumentException or FormatException or OverflowException)
        {
            return true;
        }
    }
}
