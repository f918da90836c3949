using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Tests.Histories;

public sealed class GeneratedHistoriesTests : IDisposable
{
    private readonly TempRegister _register = new("generated histories");
    private readonly TempFolder _folder = new();

    public void Dispose()
    {
        _register.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void A_thousand_random_deeds_leave_nothing_to_find_and_are_made_again_from_the_logbook_alone()
    {
        new GeneratedHistory(_register.Store, "a thousand").Add(Depth.Of(1_000, 5_000, 50_000));

        var findings = _register.Findings();
        var again = _folder.File("again.db");
        Rebuild.Make(again, _register.Folder);

        Assert.Empty(findings);
        Assert.Equal(Dump.Of(_register.Folder.Database), Dump.Of(again));
    }

    [Fact]
    public void A_generated_history_of_a_hundred_and_twenty_deeds_touches_every_table_and_every_fact()
    {
        new GeneratedHistory(_register.Store, "a hundred and twenty").Add(120);

        HashSet<string> said = [];
        EntryReader entry = new();
        using var connection = SqliteFile.OpenToRead(_register.Folder.Database);

        foreach (var stored in Rebuild.Entries(connection))
        {
            entry.Read(stored.Body);
            said.UnionWith(entry.Sets.SelectMany(Names));
        }

        said.UnionWith(Rebuild.SealedFacts(connection).SelectMany(facts => Names(RowJson.ReadSealed(facts.Body))));

        var known = FactCatalogue.Tables.SelectMany(table => table.Facts.Where(fact => fact.Keeping != Keeping.Derived).Select(fact => $"{table.Name}.{fact.Name}"));
        Assert.Empty(known.Except(said));
    }

    private static IEnumerable<string> Names(ReadRow row) => row.Facts.Select(fact => $"{row.Table.Name}.{row.Table.Facts[fact.Place].Name}");
}
