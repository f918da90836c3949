using System.Text;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Tests.Logbook;

public sealed class ErasureTests : IDisposable
{
    // Each occurs nowhere else; the folded search text spells the name in one case throughout, whichever that is.
    private static readonly string[] Words = ["Quillfeather", "quillfeather", "QUILLFEATHER", "東雲", "7 Saltmarsh Lane", "prefers to pay by", "Q. of 5b"];

    private readonly TempRegister _register = new();

    public ErasureTests()
    {
        Name(1, "Zephyrine Quillfeather 東雲", "7 Saltmarsh Lane", "prefers to pay by cheque", "Q. of 5b");
        Name(2, "Mira Tolland", "2 Quay Street", "none", "T. of 5b");
    }

    public void Dispose() => _register.Dispose();

    [Fact]
    public void Not_a_byte_of_an_erased_person_is_left_in_the_folder()
    {
        EditALot();
        Assert.NotEmpty(WordsInTheFolder());

        Erase(1);

        Assert.Empty(WordsInTheFolder());
        Assert.Empty(_register.Findings());
        Assert.Empty(_register.Said);
        Assert.False(File.Exists(_register.Folder.Database + "-sweep"));
    }

    [Fact]
    public void The_logbook_goes_on_saying_that_something_stood_there_and_says_what_was_erased()
    {
        EditALot();
        var before = Bodies();

        Erase(1);

        var after = Bodies();
        Assert.Equal(before, after.Take(before.Count));
        EntryReader erasing = new();
        erasing.Read(Encoding.UTF8.GetBytes(after[^1]));
        Assert.Equal(before.Count(body => body.Contains("[[\"person\",1,", StringComparison.Ordinal)), erasing.Erased.Count);
        Assert.All(erasing.Erased, name => Assert.Contains($"[\"sealed\",{name.N},{name.Index}]", after[^1], StringComparison.Ordinal));
        Assert.Equal(("Mira Tolland", "(erased)"), _register.Store.Read(reader => (reader.Book.NameOf(2), reader.Book.NameOf(1))));
    }

    [Fact]
    public void While_another_program_reads_the_traces_wait_and_the_next_deed_sweeps_them()
    {
        EditALot();

        using (var reading = SqliteFile.OpenToRead(_register.Folder.Database))
        {
            reading.Run("BEGIN");
            reading.Number("SELECT count(*) FROM person");
            Erase(1);

            Assert.Equal([Sweep.NotYet], _register.Said);
            Assert.Empty(_register.Findings());
            Assert.NotEmpty(WordsInTheFolder());
            Name(2, "Mira Tolland", "2 Quay Street", "moved", "T. of 5b");
            Assert.Equal([Sweep.NotYet, Sweep.NotYet], _register.Said);
        }

        Name(2, "Mira Tolland", "3 Quay Street", "moved", "T. of 5b");

        Assert.Empty(WordsInTheFolder());
        Assert.Equal(2, _register.Said.Count);
        Assert.False(File.Exists(_register.Folder.Database + "-sweep"));
    }

    [Fact]
    public void A_program_that_has_the_register_open_but_reads_nothing_is_not_in_the_way()
    {
        EditALot();
        using var idle = SqliteFile.OpenToRead(_register.Folder.Database);
        idle.Number("SELECT count(*) FROM person");

        Erase(1);

        Assert.Empty(WordsInTheFolder());
        Assert.Empty(_register.Said);
    }

    [Fact]
    public void What_an_undone_row_left_behind_can_be_erased_too()
    {
        _register.Store.Write("undo", writing => Done(writing.On(Root.Person(1)).Unset, "person", 1L));

        _register.Store.Write("erase", writing =>
        {
            var deed = writing.On(Root.Person(1));
            deed.Erase("person", 1);
            deed.Unset("person", 1);

            return true;
        });

        Assert.Empty(WordsInTheFolder());
        Assert.Empty(_register.Findings());
    }

    [Fact]
    public void Erasing_a_row_that_does_not_stand_without_saying_so_is_a_mistake_and_changes_nothing()
    {
        _register.Store.Write("undo", writing => Done(writing.On(Root.Person(1)).Unset, "person", 1L));
        var before = Dump.Of(_register.Folder.Database);

        Assert.Throws<ArgumentException>(() => _register.Store.Write("erase", writing => Done(writing.On(Root.Person(1)).Erase, "person", 1L)));

        Assert.Equal(before, Dump.Of(_register.Folder.Database));
    }

    [Fact]
    public void One_deed_cannot_seal_facts_of_a_row_and_erase_them()
    {
        var before = Dump.Of(_register.Folder.Database);

        Assert.Throws<ArgumentException>(() => _register.Store.Write("erase", writing =>
        {
            var deed = writing.On(Root.Person(1));
            deed.Set("person", 1, ("erased", "yes"), ("note", "asked for it by letter"));
            deed.Erase("person", 1);

            return true;
        }));

        Assert.Equal(before, Dump.Of(_register.Folder.Database));
    }

    private static bool Done(Action<string, long> act, string table, long id)
    {
        act(table, id);

        return true;
    }

    private void Erase(long id) => _register.Store.Write("erase", writing =>
    {
        var deed = writing.On(Root.Person(id));
        deed.Set("person", id, ("erased", "yes"));
        deed.Erase("person", id);

        return true;
    });

    private void Name(long id, string name, string contact, string note, string classCode) => _register.Store.Write("person", writing =>
    {
        writing.On(Root.Person(id)).Set(
            "person", id,
            ("what", "person"), ("name", name), ("protected", "yes"), ("public_name", "initials"), ("class_code", classCode), ("contact", contact), ("note", note), ("erased", "no"));

        return true;
    });

    /// <summary>Notes that grow and shrink push cells from page to page, so that old copies lie about in the file.</summary>
    private void EditALot()
    {
        for (var edit = 1; edit <= 40; edit++)
        {
            Name(1, "Zephyrine Quillfeather 東雲", "7 Saltmarsh Lane", string.Concat(Enumerable.Repeat("prefers to pay by cheque. ", edit * 37 % 300)), "Q. of 5b");
            Name(2 + (edit % 9), "Mira Tolland", "2 Quay Street", new string('x', edit * 53 % 4_000), "T. of 5b");
        }
    }

    private List<string> WordsInTheFolder() =>
        [.. Directory.GetFiles(_register.Folder.FullPath, "*", SearchOption.AllDirectories)
            .Select(File.ReadAllBytes)
            .SelectMany(bytes => Words.Where(word => bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(word)) >= 0))];

    private List<string> Bodies() => _register.Store.Read(reader => reader.NewestEntries(1_000).Reverse().Select(line => line.Body).ToList());
}
