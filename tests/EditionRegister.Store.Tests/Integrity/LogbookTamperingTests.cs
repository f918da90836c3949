using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store.Tests.Histories;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Integrity;

public sealed class LogbookTamperingTests : IDisposable
{
    private readonly TempRegister _register = new();
    private readonly TempFolder _folder = new();
    private readonly string _older;

    public LogbookTamperingTests()
    {
        GeneratedHistory history = new(_register.Store, "cut off");
        history.Add(40);
        _older = _folder.File("older.db");
        File.Copy(_register.Folder.Database, _older);
        history.Add(5);
    }

    public void Dispose()
    {
        _register.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void An_end_cut_off_together_with_everything_it_wrote_is_found_by_the_hash_tree_kept_for_the_next_entry()
    {
        GoBackTo(_older, except: "frontier");

        var finding = Assert.Single(_register.Findings());

        Assert.Equal("LogbookIsUnbroken", finding.Rule);
        Assert.EndsWith("the hash tree kept for the next entry is not the one the entries give: entries are missing at the end, or the tree was changed.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_file_of_yesterday_is_only_told_by_a_head_that_was_kept_elsewhere()
    {
        var printedOnACertificate = _register.Store.Read(reader => reader.Head);

        GoBackTo(_older, except: "");

        Assert.Empty(_register.Findings());
        Assert.NotEqual(printedOnACertificate, _register.Store.Read(reader => reader.HeadAt(printedOnACertificate.N)));
    }

    [Fact]
    public void Two_entries_that_changed_places_are_found()
    {
        using (var connection = OpenWithoutGuards())
        {
            connection.Run("UPDATE logbook SET n = -n WHERE n IN (7, 8); UPDATE logbook SET n = 15 + n WHERE n < 0;");
        }

        var rules = _register.Findings().Select(finding => (finding.Rule, finding.Subject.Id));

        Assert.Contains(("LogbookIsUnbroken", 7), rules);
        Assert.Contains(("LogbookIsUnbroken", 8), rules);
    }

    [Fact]
    public void A_sealed_fact_that_vanished_without_an_entry_is_found_and_one_that_came_back_too()
    {
        using (var connection = OpenWithoutGuards())
        {
            connection.Run("DELETE FROM sealed WHERE n = (SELECT max(n) FROM sealed)");
            connection.Run("INSERT INTO sealed (n, i, salt, body) SELECT 1, 0, salt, body FROM sealed LIMIT 1");
        }

        var messages = _register.Findings().Where(finding => finding.Rule == "SealedFactsAgree").Select(finding => finding.Message).ToList();

        Assert.Contains("Entry 1: sealed part 0 lies in the register, but no entry speaks of it.", messages);
        Assert.Contains(messages, message => message.EndsWith("is gone, and no entry says that it was erased.", StringComparison.Ordinal));
    }

    private SqliteConnection OpenWithoutGuards()
    {
        var connection = _register.OpenUnguarded();

        foreach (var guard in Schema.Guards.Keys)
        {
            connection.Run($"DROP TRIGGER {guard}");
        }

        return connection;
    }

    /// <summary>Every row as it was in an older file, with the guards back in place afterwards.</summary>
    private void GoBackTo(string older, string except)
    {
        using var connection = OpenWithoutGuards();
        connection.Run("ATTACH @1 AS older", older);

        foreach (var table in FactCatalogue.Tables.Select(table => table.Name).Concat(["logbook", "sealed", "frontier", "sqlite_sequence"]).Where(table => table != except))
        {
            var columns = string.Join(", ", Dump.Columns(connection, table));
            connection.Run($"DELETE FROM main.{table}; INSERT INTO main.{table} ({columns}) SELECT {columns} FROM older.{table};");
        }

        connection.Run("DETACH older");
        Schema.MakeGuards(connection, Schema.Newest);
    }
}
