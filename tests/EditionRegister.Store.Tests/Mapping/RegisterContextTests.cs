using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Mapping;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace EditionRegister.Store.Tests.Mapping;

public sealed class RegisterContextTests : IDisposable
{
    private readonly TempRegister _register = new();

    public RegisterContextTests() => SmallStudio.Furnish(_register.Store);

    public void Dispose() => _register.Dispose();

    [Fact]
    public void The_mapping_says_what_the_schema_says_column_by_column()
    {
        using RegisterContext context = new(_register.Folder.Database);
        using var connection = SqliteFile.OpenToRead(_register.Folder.Database);

        var mapped = (
            from row in context.Model.GetEntityTypes()
            from property in row.GetProperties()
            select $"{row.GetTableName()}.{property.GetColumnName()} {property.GetColumnType()} {(property.IsNullable ? "null" : "not null")}{(property.IsPrimaryKey() ? " key" : "")}").Order(StringComparer.Ordinal);

        var tables = context.Model.GetEntityTypes().Select(row => row.GetTableName()!).ToList();
        Assert.Equal(
            ["edition", "impression", "number", "numbering", "numbering_kind", "ownership", "person", "place", "print_run", "whereabouts", "work", "work_role"],
            tables.Order(StringComparer.Ordinal));
        Assert.Equal(tables.SelectMany(table => Columns(connection, table)).Where(EveryRegisterHas).Order(StringComparer.Ordinal), mapped);
    }

    [Fact]
    public void Every_mapped_table_can_be_read()
    {
        using RegisterContext context = new(_register.Folder.Database);

        Assert.Equal(
            (1, 1, 2, 2, 1, 2, 16, 3, 5, 4, 2, 2),
            (context.Works.Count(), context.WorkRoles.Count(), context.People.Count(), context.Places.Count(), context.PrintRuns.Count(), context.Editions.Count(),
                context.NumberingKinds.Count(), context.Numberings.Count(), context.Numbers.Count(), context.Impressions.Count(), context.Whereabouts.Count(), context.Ownerships.Count()));
        Assert.Equal("Harbour", context.Impressions.Select(sheet => sheet.InRun.OfWork.Title).First());
        Assert.Empty(context.ChangeTracker.Entries());
    }

    [Fact]
    public async Task Nothing_is_ever_written_through_it()
    {
        await using RegisterContext context = new(_register.Folder.Database);
        context.Places.Add(new PlaceRow { Id = 9, Name = "attic", V = 2 });

        Assert.Throws<InvalidOperationException>(() => context.SaveChanges());
        await Assert.ThrowsAsync<InvalidOperationException>(() => context.SaveChangesAsync());
        var refused = Assert.Throws<SqliteException>(() => context.Places.ExecuteDelete());
        Assert.Equal(8, refused.SqliteErrorCode);
        Assert.Equal(2, context.Places.Count());
    }

    [Fact]
    public void A_file_that_is_no_register_is_refused_as_everywhere()
    {
        using TempFolder folder = new();
        File.WriteAllText(folder.File("register.db"), "shopping list, and not a short one: it goes on for more than a hundred bytes, as databases of any kind do as well");
        using RegisterContext context = new(folder.File("register.db"));

        var refused = Assert.Throws<RefusedException>(() => context.Places.Count());

        Assert.Equal("register-cannot-open", refused.Name);
    }

    /// <summary>Lists read registers of every form as they are, so they map the facts that every form has.</summary>
    private static bool EveryRegisterHas(string column)
    {
        var (table, name) = (column.Split('.')[0], column.Split('.', ' ')[1]);
        var facts = FactCatalogue.Table(table);

        return facts.PlaceOf(name) is not (>= 0 and var place) || facts.Facts[place].Since == 1;
    }

    private static List<string> Columns(SqliteConnection connection, string table) => Dump.Column(
        connection,
        $"SELECT '{table}.' || name || ' ' || type || CASE WHEN pk THEN ' not null key' WHEN \"notnull\" THEN ' not null' ELSE ' null' END FROM pragma_table_info('{table}')");
}
