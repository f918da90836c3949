using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private readonly CliRun _cli = new();

    public CheckCommandTests()
    {
        _cli.Run("new", "studio");
        _cli.Set("EDREG_REGISTER", Path.Combine(_cli.Folder, "studio"));
        _cli.Run("person", "add", "Mira Tolland");
        _cli.Run("work", "add", "--title", "Harbour", "--maker", "Mira");
        _cli.Run("run", "add", "1", "--pile", "2");
        _cli.Run("sort", "kept", "--work", "1", "--pile", "1-2");
        _cli.Run("declare", "1", "--numbering", "1-2");
        _cli.Run("number", "1");
    }

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void Says_each_finding_with_its_basis_and_remedy_and_ends_with_one()
    {
        _cli.Run("inscribe", "--edition", "1", "--sheets", "1", "--pencilled", "2/2");

        var code = _cli.Run("check");

        var lines = _cli.Output.ToString().Split('\n');
        Assert.Equal(1, code);
        Assert.Equal("contradiction PencilAgreesWithRecord: “Harbour” 1/2 (RZSH-4EWR)", lines[0]);
        Assert.StartsWith("  Basis: ", lines[2], StringComparison.Ordinal);
        Assert.StartsWith("  Remedy: ", lines[3], StringComparison.Ordinal);
        Assert.StartsWith("Something to mend: 1 contradiction, 0 queries, 0 notes; the logbook is unbroken from 1 to 8, head ", lines[^2], StringComparison.Ordinal);
        Assert.Equal("", _cli.Error.ToString());
    }

    [Fact]
    public void Says_the_same_to_machines()
    {
        _cli.Run("inscribe", "--edition", "1", "--sheets", "1", "--pencilled", "2/2");
        _cli.Run("log", "--json", "--newest", "1");
        using var log = JsonDocument.Parse(_cli.Output.ToString());

        var code = _cli.Run("check", "--json");

        using var document = JsonDocument.Parse(_cli.Output.ToString());
        var finding = Assert.Single(document.RootElement.GetProperty("findings").EnumerateArray().ToList());
        Assert.Equal(1, code);
        Assert.Equal("contradiction", finding.GetProperty("severity").GetString());
        Assert.Equal("PencilAgreesWithRecord", finding.GetProperty("rule").GetString());
        Assert.Equal(1, document.RootElement.GetProperty("contradictions").GetInt32());
        Assert.True(document.RootElement.GetProperty("logbook").GetProperty("unbroken").GetBoolean());
        Assert.Equal(log.RootElement.GetProperty("entries")[0].GetProperty("head").GetString(), document.RootElement.GetProperty("logbook").GetProperty("head").GetString());
    }

    [Fact]
    public void Tells_what_was_accepted_apart_and_counts_it_no_more()
    {
        _cli.Run("inscribe", "--edition", "1", "--sheets", "1", "--pencilled", "2/2");
        _cli.Run("check", "--json");
        using var before = JsonDocument.Parse(_cli.Output.ToString());
        var handle = before.RootElement.GetProperty("findings")[0].GetProperty("handle").GetString()!;
        Assert.Equal(JsonValueKind.Null, before.RootElement.GetProperty("findings")[0].GetProperty("accepted").ValueKind);

        var accepted = _cli.Run("accept", handle, "--reason", "the list is older", "--by", "1");
        var code = _cli.Run("check");

        var lines = _cli.Output.ToString().Split('\n');
        Assert.Equal((0, 0), (accepted, code));
        Assert.Equal("Accepted:", lines[0]);
        Assert.StartsWith($"  {handle} contradiction PencilAgreesWithRecord: ", lines[1], StringComparison.Ordinal);
        Assert.Equal("    2026-03-01, Mira Tolland: the list is older", lines[2]);
        Assert.StartsWith("Nothing to mend: 0 contradictions, 0 queries, 0 notes; 1 accepted; the logbook is unbroken from 1 to 9, head ", lines[4], StringComparison.Ordinal);

        _cli.Run("check", "--json");
        using var after = JsonDocument.Parse(_cli.Output.ToString());
        var finding = after.RootElement.GetProperty("findings")[0];
        Assert.Equal(handle, finding.GetProperty("handle").GetString());
        Assert.Equal(("the list is older", "Mira Tolland"), (finding.GetProperty("accepted").GetProperty("reason").GetString(), finding.GetProperty("accepted").GetProperty("by").GetString()));
        Assert.Equal((0, 1), (after.RootElement.GetProperty("contradictions").GetInt32(), after.RootElement.GetProperty("accepted").GetInt32()));
    }

    [Fact]
    public void What_the_file_itself_is_found_to_be_has_no_handle()
    {
        using (SqliteConnection connection = new($"Data Source={Path.Combine(_cli.Folder, "studio", "register.db")};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "CREATE TABLE other (a)";
            command.ExecuteNonQuery();
        }

        _cli.Run("check");

        Assert.Contains("contradiction SchemaIsAsShipped: ", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Handle: ", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("edreg accept", _cli.Output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("accept 7KQ4M2")]
    [InlineData("accept 7KQ4M2 --reason seen --take-back")]
    public void Wants_a_reason_or_to_take_one_back(string line)
    {
        Assert.Equal(2, _cli.Run(line.Split(' ')));
    }

    [Fact]
    public void Says_that_the_logbook_is_broken_where_someone_rewrote_it()
    {
        using (SqliteConnection connection = new($"Data Source={Path.Combine(_cli.Folder, "studio", "register.db")};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "DROP TRIGGER logbook_is_never_changed; UPDATE logbook SET deed = 'record-nothing' WHERE n = 2;";
            command.ExecuteNonQuery();
        }

        var code = _cli.Run("check");

        Assert.Equal(1, code);
        Assert.Contains("contradiction LogbookIsUnbroken: ", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("the logbook is broken.\n", _cli.Output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("check", "--json")]
    public void Comes_to_its_last_line_in_a_file_that_cannot_be_read(params string[] args)
    {
        Scratch(Path.Combine(_cli.Folder, "studio", "register.db"));

        var code = _cli.Run(args);

        Assert.Equal(1, code);
        Assert.Equal("", _cli.Error.ToString());
        Assert.Contains("FileIsSound", _cli.Output.ToString(), StringComparison.Ordinal);

        if (args.Length == 1)
        {
            Assert.EndsWith("; the file is damaged, so its logbook is not to be relied on.\n", _cli.Output.ToString(), StringComparison.Ordinal);
        }
        else
        {
            using var document = JsonDocument.Parse(_cli.Output.ToString());
            Assert.False(document.RootElement.GetProperty("logbook").GetProperty("unbroken").GetBoolean());
        }
    }

    [Fact]
    public void Exits_with_nothing_when_there_are_only_queries_and_notes()
    {
        _cli.Run("inscribe", "--edition", "1", "--sheets", "1", "--pencilled", "one of two", "--titled", "Harbor");

        var code = _cli.Run("check");

        Assert.Equal(0, code);
        Assert.StartsWith("query PencilAgreesWithRecord: ", _cli.Output.ToString(), StringComparison.Ordinal);
        Assert.Contains("\nNothing to mend: 0 contradictions, 1 query, 1 note; the logbook is unbroken from 1 to 8, head ", _cli.Output.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Leaves the first pages, which say what the file is, and spoils every byte after them.</summary>
    private static void Scratch(string database)
    {
        var bytes = File.ReadAllBytes(database);

        for (var at = 3 * 4096; at < bytes.Length; at++)
        {
            bytes[at] ^= 0x55;
        }

        File.WriteAllBytes(database, bytes);
    }
}
