using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.Store.Tests.Sqlite;

/// <summary>A register file made by the program of the first form, in the hands of this one.</summary>
public sealed class UpgradeTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly List<string> _said = [];
    private readonly RegisterFolder _register;
    private readonly RegisterStore _store;

    public UpgradeTests()
    {
        _register = new RegisterFolder(_folder.Path);
        File.Copy(LogbookFixturePath(), _register.Database);
        FakeTimeProvider time = new(new DateTimeOffset(2027, 1, 9, 8, 30, 0, TimeSpan.Zero));
        _store = new RegisterStore(_register, new Surroundings(time, new SeededRandomness("upgrade"), _said.Add), () => 1);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void An_older_register_is_read_and_checked_as_it_is()
    {
        var before = File.ReadAllBytes(_register.Database);

        var works = _store.Read(reader => reader.Works().Count());
        var findings = _store.Check(_ => []).ToList();

        Assert.Equal(6, works);
        Assert.Empty(findings);
        Assert.Equal(before, File.ReadAllBytes(_register.Database));
        Assert.Empty(_said);
    }

    [Fact]
    public void The_guards_of_its_own_form_are_checked_too()
    {
        using (var connection = Unguarded())
        {
            connection.Run("DROP TRIGGER person_names_its_entry_when_made");
        }

        Assert.Equal(["The trigger person_names_its_entry_when_made is missing."], _store.Check(_ => []).Select(finding => finding.Message));
    }

    [Fact]
    public void The_first_deed_upgrades_it_and_loses_nothing()
    {
        var before = Rows();
        var entries = _store.Read(reader => reader.Head.N);

        AddPlace("Attic");

        var changed = Rows().Except(before).Select(row => row.Split(':')[0]).Distinct();
        var lost = before.Except(Rows()).ToList();
        Assert.Equal(["frontier", "logbook", "place", "register", "sealed", "sqlite_sequence"], changed.Order(StringComparer.Ordinal));
        Assert.All(lost, row => Assert.True(row.StartsWith("register:", StringComparison.Ordinal) || row.StartsWith("frontier:", StringComparison.Ordinal) || row.StartsWith("sqlite_sequence:", StringComparison.Ordinal), row));
        Assert.Empty(_store.Check(_ => []));
        var upgrade = _store.Read(reader => reader.Entry(entries + 1))!;
        Assert.Equal(("upgrade-register", "register/1"), (upgrade.Deed, upgrade.Root));
        Assert.Contains("\"set\":[[\"register\",1,{\"schema\":2}]]", upgrade.Body, StringComparison.Ordinal);
        Assert.Equal(entries + 2, _store.Read(reader => reader.Head.N));
    }

    [Fact]
    public void A_copy_of_it_as_it_was_is_kept_for_its_owner_and_said_where()
    {
        var before = Dump.Of(_register.Database);

        AddPlace("Attic");

        var copy = Path.Combine(_register.Backups, "form-1-20270109T083000Z.db");
        Assert.Equal([$"This register was of an older form and has been upgraded to form 2; the file as it was is kept at {copy}."], _said);
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

    [Fact]
    public void The_second_deed_upgrades_nothing()
    {
        AddPlace("Attic");

        AddPlace("Cellar");

        Assert.Single(_said);
        Assert.Single(Directory.GetFiles(_register.Backups));
    }

    [Fact]
    public void A_deed_that_is_refused_leaves_the_form_as_it_was()
    {
        var before = Dump.Of(_register.Database);

        Assert.Throws<RefusedException>(() => _store.Write<bool>("nothing", _ => throw new RefusedException("no", "No.")));

        Assert.Equal(before, Dump.Of(_register.Database));
        Assert.False(Directory.Exists(_register.Backups));
        Assert.Empty(_said);
    }

    [Fact]
    public void Where_no_copy_can_be_made_nothing_is_upgraded()
    {
        var before = Dump.Of(_register.Database);
        File.WriteAllText(_register.Backups, "a file where the folder should be");

        var refused = Assert.Throws<RefusedException>(() => AddPlace("Attic"));

        Assert.Equal("upgrade-not-copied", refused.Name);
        Assert.Equal(before, Dump.Of(_register.Database));
    }

    [Fact]
    public void A_window_that_still_reads_sees_the_register_as_it_was_and_then_as_it_is()
    {
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
        Assert.Equal(6, reader.Works().Count());
    }

    [Fact]
    public void A_program_killed_before_the_end_leaves_the_old_form()
    {
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

    [Fact]
    public void An_upgraded_register_is_made_again_from_its_logbook_and_an_older_one_in_its_own_form()
    {
        var older = _folder.File("older.db");
        var newer = _folder.File("newer.db");
        var before = Dump.Of(_register.Database);

        Rebuild.Make(older, _register);
        AddPlace("Attic");
        Rebuild.Make(newer, _register);

        Assert.Equal(before, Dump.Of(older));
        Assert.Equal(Dump.Of(_register.Database), Dump.Of(newer));
    }

    [Fact]
    public void A_register_that_says_an_older_form_than_it_has_is_not_upgraded_over()
    {
        AddPlace("Attic");

        using (var connection = Unguarded())
        {
            connection.Run("DROP TRIGGER register_names_its_entry_when_changed; UPDATE register SET schema = 1");
        }

        var refused = Assert.Throws<RefusedException>(() => AddPlace("Cellar"));

        Assert.Equal("register-damaged", refused.Name);
        Assert.Contains(_store.Check(_ => []), finding => finding.Rule == "TablesAgreeWithLogbook");
    }

    private static string LogbookFixturePath() => Logbook.LogbookFixture.Path("register-0001.db");

    private void AddPlace(string name) => _store.Write("record-place", writing =>
    {
        var id = writing.NewId("place");
        writing.On(Root.Place(id)).Set("place", id, ("name", name));

        return true;
    });

    /// <summary>Every row of the tables that the first form had.</summary>
    private List<string> Rows()
    {
        using var connection = SqliteFile.OpenToRead(_register.Database);

        return [.. Dump.Tables(connection)
            .Where(table => FactCatalogue.Find(table) is not { Since: > 1 })
            .SelectMany(table => Dump.Of(connection, table).Split('\n', StringSplitOptions.RemoveEmptyEntries))];
    }

    private SqliteConnection Unguarded()
    {
        SqliteConnection connection = new($"Data Source={_register.Database};Pooling=False");
        connection.Open();

        return connection;
    }
}
