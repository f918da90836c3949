using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A numbering as its row stands; to be read, never written.</summary>
public sealed class NumberingRow
{
    public long Id { get; init; }

    public long Edition { get; init; }

    public long Ordinal { get; init; }

    public required string Kind { get; init; }

    public required string Notation { get; init; }

    public long? Size { get; init; }

    public required string SizeState { get; init; }

    public long V { get; init; }

    public EditionRow OfEdition { get; init; } = null!;

    public NumberingKindRow OfKind { get; init; } = null!;
}

internal sealed class NumberingMapping : IEntityTypeConfiguration<NumberingRow>
{
    public void Configure(EntityTypeBuilder<NumberingRow> row)
    {
        row.ToTable("numbering");
        row.HasOne(one => one.OfEdition).WithMany().HasForeignKey(one => one.Edition);
        row.HasOne(one => one.OfKind).WithMany().HasForeignKey(one => one.Kind).HasPrincipalKey(kind => kind.Word);
    }
}
