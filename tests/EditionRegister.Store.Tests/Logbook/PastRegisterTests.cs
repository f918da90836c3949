using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store.Tests.Histories;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Logbook;

/// <summary>The register as it stood at the end of a day. The clock of these registers begins on 1 March 2026 at ten, and goes on a second with every look.</summary>
public sealed class PastRegisterTests : IDisposable
{
    private readonly TempRegister _register = new("past");
    private readonly TempFolder _folder = new();

    public PastRegisterTests() => _register.Time.SetLocalTimeZone(TimeZoneInfo.Utc);

    public void Dispose()
    {
        _register.Dispose();
        _folder.Dispose();
    }

    // The second opinion is the register itself, copied on each of the days.
    [Fact]
    public void It_is_the_very_register_that_was_there()
    {
        GeneratedHistory history = new(_register.Store, "days");
        Dictionary<DateOnly, string> stood = [];

        for (var day = new DateOnly(2026, 3, 1); day <= new DateOnly(2026, 3, 6); day = day.AddDays(1))
        {
            history.Add(25);
            stood.Add(day, WithoutErased());
            _register.Time.SetUtcNow(new DateTimeOffset(day.AddDays(1), new TimeOnly(9, 0), TimeSpan.Zero));
        }

        foreach (var (day, then) in stood)
        {
            using var past = _register.Store.AsOf(day);

            Assert.Equal(then, past.Store.Read(reader => Open(reader.Connection)));
            // Who was erased since was not erased yet, and has no name any more: the table itself would refuse such a row.
            Assert.DoesNotContain(past.Store.Check(_ => []), finding => finding.Rule != "SealedFactsAgree" && finding.Message != "The database reports: CHECK constraint failed in person.");
        }
    }

    [Fact]
    public void Nothing_of_it_lies_on_the_disk_and_nothing_of_the_register_is_touched()
    {
        new GeneratedHistory(_register.Store, "disk").Add(20);
        var before = Files();

        using (var past = _register.Store.AsOf(new DateOnly(2026, 3, 1)))
        {
            Assert.True(past.Store.Read(reader => reader.Head.N) > 1);
            Assert.Equal(before, Files());
        }

        Assert.Equal(before, Files());
    }

    [Fact]
    public void A_day_ends_at_midnight_where_the_register_is_kept()
    {
        _register.Time.SetLocalTimeZone(TimeZoneInfo.CreateCustomTimeZone("two east", TimeSpan.FromHours(2), "two east", "two east"));
        var late = AddPlaceAt("before midnight", new DateTimeOffset(2026, 3, 5, 21, 59, 59, 998, TimeSpan.Zero));
        var early = AddPlaceAt("after midnight", new DateTimeOffset(2026, 3, 5, 22, 0, 0, TimeSpan.Zero));

        using var fifth = _register.Store.AsOf(new DateOnly(2026, 3, 5));
        using var sixth = _register.Store.AsOf(new DateOnly(2026, 3, 6));

        Assert.Equal((late, early), (fifth.Last.N, sixth.Last.N));
    }

    [Fact]
    public void A_clock_set_back_in_between_loses_no_entry_and_brings_none_forward()
    {
        AddPlaceAt("on the third", new DateTimeOffset(2026, 3, 3, 9, 0, 0, TimeSpan.Zero));
        var astray = AddPlaceAt("by a clock that said 1970", DateTimeOffset.UnixEpoch);
        AddPlaceAt("on the fifth", new DateTimeOffset(2026, 3, 5, 9, 0, 0, TimeSpan.Zero));

        using var past = _register.Store.AsOf(new DateOnly(2026, 3, 4));

        Assert.Equal(astray, past.Last.N);
    }

    [Fact]
    public void What_was_erased_since_is_not_in_it()
    {
        AddPerson("Elsie Marrowby");
        _register.Time.SetUtcNow(new DateTimeOffset(2026, 3, 8, 9, 0, 0, TimeSpan.Zero));
        _register.Store.Write("erase-person", writing =>
        {
            writing.On(Root.Person(1)).Set("person", 1, ("erased", "yes"));
            writing.On(Root.Person(1)).Erase("person", 1);

            return true;
        });

        using var past = _register.Store.AsOf(new DateOnly(2026, 3, 1));

        var person = past.Store.Read(reader => reader.Book.Person(1))!;
        Assert.Null(person.Name);
        Assert.False(person.IsErased);
        Assert.DoesNotContain("Marrowby", past.Store.Read(reader => string.Join('\n', reader.NewestEntries(100).Select(entry => entry.Body))), StringComparison.Ordinal);
        Assert.DoesNotContain(Hex("Marrowby"), past.Store.Read(reader => Dump.Of(reader.Connection)), StringComparison.Ordinal);
    }

    [Fact]
    public void It_has_the_form_that_the_register_had_then()
    {
        using TempFolder folder = new();
        RegisterFolder older = new(folder.Path);
        File.Copy(LogbookFixture.Path("register-0001.db"), older.Database);
        _register.Time.SetUtcNow(new DateTimeOffset(2027, 1, 9, 8, 30, 0, TimeSpan.Zero));
        RegisterStore store = new(older, _register.Surroundings);
        store.Write("record-place", writing =>
        {
            var id = writing.NewId("place");
            writing.On(Root.Place(id)).Set("place", id, ("name", "Attic"));

            return true;
        });

        using var before = store.AsOf(new DateOnly(2027, 1, 8));
        using var after = store.AsOf(new DateOnly(2027, 1, 9));

        Assert.Equal((1, 4), (before.Store.Read(reader => Schema.FormOf(reader.Connection)), after.Store.Read(reader => Schema.FormOf(reader.Connection))));
        Assert.Equal(6, before.Store.Read(reader => reader.Works().Count()));
    }

    [Fact]
    public void It_takes_no_deed()
    {
        using var past = _register.Store.AsOf(new DateOnly(2026, 3, 1));

        Assert.Throws<InvalidOperationException>(() => past.Store.Write("nothing", _ => true));
        Assert.Throws<RefusedException>(() => past.Store.Read(reader => reader.Connection.Run("DELETE FROM place")));
    }

    [Theory]
    [InlineData(2026, 2, 28, "day-before-register", "On 2026-02-28 there was no register yet: its first entry was made on 2026-03-01. Nothing was changed. Name that day or a later one; what was before it stands in what was recorded since.")]
    [InlineData(1, 1, 1, "day-before-register", "On 0001-01-01 there was no register yet: its first entry was made on 2026-03-01. Nothing was changed. Name that day or a later one; what was before it stands in what was recorded since.")]
    [InlineData(2026, 3, 2, "day-not-over", "2026-03-02 is not here yet: today is 2026-03-01. Nothing was changed. Name today or a day before it.")]
    [InlineData(9999, 12, 31, "day-not-over", "9999-12-31 is not here yet: today is 2026-03-01. Nothing was changed. Name today or a day before it.")]
    public void A_day_without_a_register_is_refused(int year, int month, int day, string name, string message)
    {
        var refused = Assert.Throws<RefusedException>(() => _register.Store.AsOf(new DateOnly(year, month, day)));

        Assert.Equal((name, message), (refused.Name, refused.Message));
    }

    private static string Hex(string text) => Convert.ToHexString(System.Text.Encoding.UTF8.GetBytes(text));

    /// <summary>Every open fact of every table, as it stands: what was sealed may be erased later, and is looked at by a test of its own.</summary>
    private static string Open(SqliteConnection connection) => string.Join('\n', FactCatalogue.Tables.SelectMany(table =>
        Dump.Rows(connection, table.Name, ["id", "v", .. table.Facts.Where(fact => fact.Keeping == Keeping.Open).Select(fact => fact.Name)])));

    private string WithoutErased() => _register.Store.Read(reader => Open(reader.Connection));

    private string Files() => string.Join('\n', Directory.GetFiles(_register.Folder.FullPath, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        .Where(file => !file.EndsWith("-shm", StringComparison.Ordinal) && !file.EndsWith("-wal", StringComparison.Ordinal)).Select(file => $"{file} {Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)))}"));

    private void AddPerson(string name) => _register.Store.Write("record-person", writing =>
    {
        var id = writing.NewId("person");
        writing.On(Root.Person(id)).Set("person", id, ("what", "person"), ("name", name), ("protected", "yes"), ("public_name", "unnamed"), ("erased", "no"));

        return true;
    });

    /// <summary>Answers the entry that recorded it.</summary>
    private long AddPlaceAt(string name, DateTimeOffset at)
    {
        RegisterStore store = new(_register.Folder, _register.Surroundings with { Time = new Microsoft.Extensions.Time.Testing.FakeTimeProvider(at) });
        _register.Time.AdjustTime(new DateTimeOffset(2026, 3, 20, 0, 0, 0, TimeSpan.Zero));

        return store.Write("record-place", writing =>
        {
            var id = writing.NewId("place");
            writing.On(Root.Place(id)).Set("place", id, ("name", name));

            return writing.Read.Head.N + 1;
        });
    }
}
