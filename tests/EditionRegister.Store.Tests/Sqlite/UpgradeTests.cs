using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.Store.Tests.Sqlite;

/// <summary>Register files made by the programs of the first three forms, in the hands of this one.</summary>
public sealed class UpgradeTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly List<string> _said = [];
    private readonly RegisterFolder _register;
    private readonly RegisterStore _store;

    public UpgradeTests()
    {
        _register = new RegisterFolder(_folder.Path);
        FakeTimeProvider time = new(new DateTimeOffset(2027, 1, 9, 8, 30, 0, TimeSpan.Zero));
        _store = new RegisterStore(_register, new Surroundings(time, new SeededRandomness("upgrade"), _said.Add), () => 1);
    }

    public static TheoryData<int> Older => [1, 2, 3];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Older))]
    public void An_older_register_is_read_and_checked_as_it_is(int form)
    {
        Take(form);
        var before = File.ReadAllBytes(_register.Database);

        var works = _store.Read(reader => reader.Works().Select(work => work.Impressions.Count).ToList());
        var findings = _store.Check(_ => []).ToList();

        Assert.Equal(form == 3 ? 7 : 6, works.Count);
        Assert.Empty(findings);
        Assert.Equal(before, File.ReadAllBytes(_register.Database));
        Assert.Empty(_said);
    }

    [Fact]
    public void A_show_and_an_accepted_finding_of_the_second_form_are_still_read_after_the_upgrade()
    {
        Take(2);
        var (shows, accepted) = (Count("show_impression"), Count("accepted_finding"));

        AddPlace("Attic");

        Assert.Equal((5, 1), (shows, accepted));
        Assert.Equal((5, 1), (Count("show_impression"), Count("accepted_finding")));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void The_guards_of_its_own_form_are_checked_too(int form)
    {
        Take(form);

        using (var connection = Unguarded())
        {
            connection.Run("DROP TRIGGER person_names_its_entry_when_made");
        }

        Assert.Equal(["The trigger person_names_its_entry_when_made is missing."], _store.Check(_ => []).Select(finding => finding.Message));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void The_first_deed_upgrades_it_and_loses_nothing(int form)
    {
        Take(form);
        var columns = Columns();
        var before = Rows(columns);
        var entries = _store.Read(reader => reader.Head.N);

        AddPlace("Attic");

        var after = Rows(columns);
        Assert.Equal(
            (string[])["frontier", "logbook", .. form < 3 ? ["move_kind"] : Array.Empty<string>(), "place", "register", "sealed", "sqlite_sequence"],
            after.Except(before).Select(TableOf).Distinct().Order(StringComparer.Ordinal));

        // The third's 100 entries are subtrees of 64, 32 and 4, which two more leave as they are.
        Assert.Equal((string[])[.. form < 3 ? ["frontier"] : Array.Empty<string>(), "register", "sqlite_sequence"], before.Except(after).Select(TableOf).Distinct().Order(StringComparer.Ordinal));
        Assert.Empty(_store.Check(_ => []));
        Assert.Equal(entries + 2, _store.Read(reader => reader.Head.N));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void Every_column_that_came_with_it_is_null_in_every_row_that_was_there(int form)
    {
        Take(form);
        var older = Columns();

        AddPlace("Attic");

        var filled = Columns()
            .Where(table => older.ContainsKey(table.Key))
            .SelectMany(table => table.Value.Except(older[table.Key]).Select(column => (Table: table.Key, Column: column)))
            .ToDictionary(added => $"{added.Table}.{added.Column}", added => Number($"SELECT count({added.Column}) FROM {added.Table}"));
        
        // 24 columns came with form 3 and 58 with form 4, of which 3 are in tables that came with form 2 and 11 in tables of form 3.
        Assert.Equal(form switch { 1 => 24 + 58 - 11 - 3, 2 => 24 + 58 - 11, _ => 58 }, filled.Count);
        Assert.All(filled, column => Assert.Equal(0, column.Value));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void The_entry_of_the_upgrade_says_the_form_and_the_words_the_lists_lacked(int form)
    {
        Take(form);
        var entries = _store.Read(reader => reader.Head.N);

        AddPlace("Attic");

        var upgrade = _store.Read(reader => reader.Entry(entries + 1))!;
        Assert.Equal(("upgrade-register", "register/1"), (upgrade.Deed, upgrade.Root));
        Assert.Contains($"\"set\":[[\"register\",1,{{\"schema\":4}}],[\"{(form < 3 ? "move_kind" : "technique")}\",", upgrade.Body, StringComparison.Ordinal);
        Assert.Equal(form < 3, upgrade.Body.Contains("{\"chain\":\"whereabouts\",\"leaves\":\"yes\",\"name\":\"consigned further\",\"word\":\"sub-consigned\"}", StringComparison.Ordinal));
        Assert.All(Domain.Conditions.ConditionTerm.All, term => Assert.Equal(form < 3, upgrade.Body.Contains($"\"word\":\"{term.Word}\"", StringComparison.Ordinal)));
        Assert.All(Domain.Reading.Techniques.Technique.All, technique => Assert.Contains($"\"word\":\"{technique.Word}\"", upgrade.Body, StringComparison.Ordinal));
        Assert.Equal(Domain.Reading.Techniques.Technique.All.Count, Count("technique"));
        Assert.Equal(Domain.Conditions.ConditionTerm.All.Count, Count("condition_term"));
        Assert.Equal(Domain.Chains.MoveKind.All.Count, Count("move_kind"));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void Its_tables_are_then_word_for_word_those_of_a_register_made_new(int form)
    {
        Take(form);
        using TempRegister fresh = new();

        AddPlace("Attic");

        using var upgraded = SqliteFile.OpenToRead(_register.Database);
        using var made = SqliteFile.OpenToRead(fresh.Folder.Database);
        Assert.Equal(Schema.AsFound(made), Schema.AsFound(upgraded));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void A_copy_of_it_as_it_was_is_kept_for_its_owner_and_said_where(int form)
    {
        Take(form);
        var before = Dump.Of(_register.Database);

        AddPlace("Attic");

        var copy = Path.Combine(_register.Backups, $"form-{form}-20270109T083000Z.db");
        Assert.Equal([$"This register was of an older form and has been upgraded to form 4; the file as it was is kept at {copy}."], _said);
        Assert.Equal([copy], Directory.GetFiles(_register.Backups));
        Assert.Equal(before, Dump.Of(copy));

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(copy));
        }

        RegisterFolder kept = new(_folder.File("kept"));
        Directory.CreateDirectory(kept.FullPath);
        File.Copy(copy, kept.Database);
        Assert.Empty(new RegisterStore(kept, Surroundings.Usual).Check(_ => []));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void The_second_deed_upgrades_nothing(int form)
    {
        Take(form);
        AddPlace("Attic");

        AddPlace("Cellar");

        Assert.Single(_said);
        Assert.Single(Directory.GetFiles(_register.Backups));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void A_deed_that_is_refused_leaves_the_form_as_it_was(int form)
    {
        Take(form);
        var before = Dump.Of(_register.Database);

        Assert.Throws<RefusedException>(() => _store.Write<bool>("nothing", _ => throw new RefusedException("no", "No.")));

        Assert.Equal(before, Dump.Of(_register.Database));
        Assert.False(Directory.Exists(_register.Backups));
        Assert.Empty(_said);
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void Where_no_copy_can_be_made_nothing_is_upgraded(int form)
    {
        Take(form);
        var before = Dump.Of(_register.Database);
        File.WriteAllText(_register.Backups, "a file where the folder should be");

        var refused = Assert.Throws<RefusedException>(() => AddPlace("Attic"));

        Assert.Equal("upgrade-not-copied", refused.Name);
        Assert.Equal(before, Dump.Of(_register.Database));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void A_window_that_still_reads_sees_the_register_as_it_was_and_then_as_it_is(int form)
    {
        Take(form);
        using var window = SqliteFile.OpenToRead(_register.Database);
        Reading.Reader reader = new(window);
        window.Run("BEGIN");
        var places = reader.Book.Places.Count;

        AddPlace("Attic");

        reader.Refresh();
        Assert.Equal(places, reader.Book.Places.Count);
        window.Run("COMMIT");
        reader.Refresh();
        Assert.Equal(places + 1, reader.Book.Places.Count);
        Assert.Equal(form == 3 ? 7 : 6, reader.Works().Count());
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void A_program_killed_before_the_end_leaves_the_old_form(int form)
    {
        Take(form);
        var before = Dump.Of(_register.Database);
        using (var connection = SqliteFile.OpenToWrite(_register.Database))
        {
            connection.Run("BEGIN IMMEDIATE");
            Upgrade upgrade = new(connection, _register.Database);
            upgrade.Run((_, _) => { }, new Writing(connection, Randomness.System, "2027-01-09T08:30:00.000Z"));
            upgrade.Copy("2027-01-09T08:30:00.000Z");
        }

        AddPlace("Attic");

        Assert.Equal([before, before], Directory.GetFiles(_register.Backups).Select(Dump.Of));
        Assert.Empty(_store.Check(_ => []));
    }

    [Fact]
    public async Task A_program_that_waited_while_a_newer_one_upgraded_it_refuses()
    {
        Take(2);
        using var newer = SqliteFile.OpenToWrite(_register.Database);
        newer.Run("BEGIN IMMEDIATE");
        TaskCompletionSource waits = new();
        RegisterStore store = new(_register, Surroundings.Usual with { Say = _ => waits.SetResult() });
        var writing = Task.Run(() => Record.Exception(() => store.Write("nothing", _ => true)));
        await waits.Task;

        newer.Run("PRAGMA user_version=99");
        newer.Run("COMMIT");

        Assert.Equal("register-newer", Assert.IsType<RefusedException>(await writing).Name);
        Assert.Equal("register-newer", Assert.Throws<RefusedException>(() => _store.Read(reader => reader.Head)).Name);
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void An_upgraded_register_is_made_again_from_its_logbook_and_an_older_one_in_its_own_form(int form)
    {
        Take(form);
        var older = _folder.File("older.db");
        var newer = _folder.File("newer.db");
        var before = Dump.Of(_register.Database);

        Rebuild.Make(older, _register);
        AddPlace("Attic");
        Rebuild.Make(newer, _register);

        Assert.Equal(before, Dump.Of(older));
        Assert.Equal(Dump.Of(_register.Database), Dump.Of(newer));
    }

    [Theory]
    [MemberData(nameof(Older))]
    public void A_register_that_says_an_older_form_than_it_has_is_not_upgraded_over(int form)
    {
        Take(form);
        AddPlace("Attic");

        using (var connection = Unguarded())
        {
            connection.Run("DROP TRIGGER register_names_its_entry_when_changed; UPDATE register SET schema = " + form);
        }

        var refused = Assert.Throws<RefusedException>(() => AddPlace("Cellar"));

        Assert.Equal("register-damaged", refused.Name);
        Assert.Contains(_store.Check(_ => []), finding => finding.Rule == "TablesAgreeWithLogbook");
    }

    private static string TableOf(string row) => row.Split(':')[0];

    private void Take(int form)
    {
        File.Copy(Logbook.LogbookFixture.Path($"register-000{form}.db"), _register.Database);

        // A file copied by SQLite's backup has lost the setting that every register is made with.
        using var connection = Unguarded();
        connection.Run("PRAGMA journal_mode=WAL");
    }

    private long Number(string sql)
    {
        using var connection = SqliteFile.OpenToRead(_register.Database);

        return connection.Number(sql);
    }

    private long Count(string table) => Number($"SELECT count(*) FROM {table}");

    private void AddPlace(string name) => _store.Write("record-place", writing =>
    {
        var id = writing.NewId("place");
        writing.On(Root.Place(id)).Set("place", id, ("name", name));

        return true;
    });

    /// <summary>Every table as it stands, with its columns.</summary>
    private Dictionary<string, List<string>> Columns()
    {
        using var connection = SqliteFile.OpenToRead(_register.Database);

        return Dump.Tables(connection).ToDictionary(table => table, table => Dump.Columns(connection, table));
    }

    /// <summary>Every row of the tables given, as far as the columns given go.</summary>
    private List<string> Rows(Dictionary<string, List<string>> columns)
    {
        using var connection = SqliteFile.OpenToRead(_register.Database);

        return [.. columns.SelectMany(table => Dump.Rows(connection, table.Key, table.Value))];
    }

    private SqliteConnection Unguarded()
    {
        SqliteConnection connection = new($"Data Source={_register.Database};Pooling=False");
        connection.Open();

        return connection;
    }
}
