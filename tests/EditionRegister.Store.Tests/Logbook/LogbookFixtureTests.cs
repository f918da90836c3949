using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store.Tests.Histories;

namespace EditionRegister.Store.Tests.Logbook;

/// <summary>What a logbook of the first form says must stay readable for as long as there are registers.</summary>
public sealed class LogbookFixtureTests : IDisposable
{
    private const string Again = "EDREG_WRITE_FIXTURE";

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_logbook_of_the_first_form_is_replayed_to_the_same_content_and_the_same_head()
    {
        WriteAnewWhenAsked();
        var (entries, sealedFacts, head) = LogbookFixture.Read(File.ReadAllText(LogbookFixture.Path("logbook-0001.jsonl")));
        RegisterFolder folder = new(_folder.Path);

        Rebuild.Make(folder.Database, entries, sealedFacts);

        RegisterStore store = new(folder, Surroundings.Usual);
        using var connection = SqliteFile.OpenToRead(folder.Database);
        Assert.Equal(File.ReadAllText(LogbookFixture.Path("content-0001.txt")).Replace("\r\n", "\n", StringComparison.Ordinal), LogbookFixture.Content(connection));
        Assert.Equal(head, store.Read(reader => reader.Head.Head));
        Assert.Empty(store.Check(_ => []));
    }

    /// <summary>With EDREG_WRITE_FIXTURE set: run once for a new form of entry, never to mend the fixture of an old one.</summary>
    private static void WriteAnewWhenAsked()
    {
        if (Environment.GetEnvironmentVariable(Again) is null)
        {
            return;
        }

        using TempRegister register = new("fixture 0001");
        new GeneratedHistory(register.Store, "sixty").Add(60);
        using var connection = SqliteFile.OpenToRead(register.Folder.Database);
        File.WriteAllText(LogbookFixture.Path("logbook-0001.jsonl"), LogbookFixture.Write(connection));
        File.WriteAllText(LogbookFixture.Path("content-0001.txt"), LogbookFixture.Content(connection));
    }
}
