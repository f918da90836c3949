using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A work as its row stands; to be read, never written.</summary>
public sealed class WorkRow
{
    public long Id { get; init; }

    public string? Title { get; init; }

    public required string TitleState { get; init; }

    public required string MakerState { get; init; }

    public string? Year { get; init; }

    public string? YearEarliest { get; init; }

    public string? YearLatest { get; init; }

    public string? Technique { get; init; }

    public string? Note { get; init; }

    public string? Search { get; init; }

    public long V { get; init; }

    public List<WorkRoleRow> Roles { get; init; } = [];
}

internal sealed class WorkMapping : IEntityTypeConfiguration<WorkRow>
{
    public void Configure(EntityTypeBuilder<WorkRow> row)
    {
        row.ToTable("work");
        row.HasMany(one => one.Roles).WithOne().HasForeignKey(role => role.Work);
    }
}
