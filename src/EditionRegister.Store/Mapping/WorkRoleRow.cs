using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>What someone did for a work as its row stands; to be read, never written.</summary>
public sealed class WorkRoleRow
{
    public long Id { get; init; }

    public long Work { get; init; }

    public long Person { get; init; }

    public required string Role { get; init; }

    public long Ordinal { get; init; }

    public long V { get; init; }

    public PersonRow Who { get; init; } = null!;
}

internal sealed class WorkRoleMapping : IEntityTypeConfiguration<WorkRoleRow>
{
    public void Configure(EntityTypeBuilder<WorkRoleRow> row)
    {
        row.ToTable("work_role");
        row.HasOne(one => one.Who).WithMany().HasForeignKey(one => one.Person);
    }
}
