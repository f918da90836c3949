using System.Text;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace EditionRegister.Store.Mapping;

/// <summary>
/// Lists, filters and pages over the register's tables. It maps what the scripts made, reads only, and tracks nothing:
/// the logbook has one writer, and this is not it.
/// </summary>
public sealed class RegisterContext : DbContext
{
    private const string OneWriter = "The register is written through its logbook only.";

    private readonly Func<SqliteConnection> _connect;
    private readonly bool _owns;

    /// <summary>Opens the file for itself.</summary>
    public RegisterContext(string database) => (_connect, _owns) = (() => SqliteFile.OpenToRead(database), true);

    /// <summary>Sees what another reader sees, at the same moment; the connection stays the other's.</summary>
    internal RegisterContext(SqliteConnection open) => (_connect, _owns) = (() => open, false);

    public DbSet<WorkRow> Works => Set<WorkRow>();

    public DbSet<WorkRoleRow> WorkRoles => Set<WorkRoleRow>();

    public DbSet<PersonRow> People => Set<PersonRow>();

    public DbSet<PlaceRow> Places => Set<PlaceRow>();

    public DbSet<PrintRunRow> PrintRuns => Set<PrintRunRow>();

    public DbSet<EditionRow> Editions => Set<EditionRow>();

    public DbSet<NumberingKindRow> NumberingKinds => Set<NumberingKindRow>();

    public DbSet<NumberingRow> Numberings => Set<NumberingRow>();

    public DbSet<NumberRow> Numbers => Set<NumberRow>();

    public DbSet<ImpressionRow> Impressions => Set<ImpressionRow>();

    public DbSet<WhereaboutsRow> Whereabouts => Set<WhereaboutsRow>();

    public DbSet<OwnershipRow> Ownerships => Set<OwnershipRow>();

    public override int SaveChanges(bool acceptAllChangesOnSuccess) => throw new InvalidOperationException(OneWriter);

    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default) =>
        throw new InvalidOperationException(OneWriter);

    protected override void OnConfiguring(DbContextOptionsBuilder optionsBuilder) =>
        optionsBuilder
            .UseSqlite(_connect(), contextOwnsConnection: _owns)
            .UseQueryTrackingBehavior(QueryTrackingBehavior.NoTracking);

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(RegisterContext).Assembly);

        foreach (var property in modelBuilder.Model.GetEntityTypes().SelectMany(row => row.GetProperties()))
        {
            property.SetColumnName(ColumnOf(property.Name));
        }
    }

    /// <summary><c>TitleState</c> is the column <c>title_state</c>.</summary>
    private static string ColumnOf(string property)
    {
        StringBuilder column = new();

        foreach (var letter in property)
        {
            column.Append(char.IsAsciiLetterUpper(letter) && column.Length > 0 ? "_" : "").Append(char.ToLowerInvariant(letter));
        }

        return column.ToString();
    }
}
