using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>An edition as its row stands; to be read, never written.</summary>
public sealed class EditionRow
{
    public long Id { get; init; }

    public long Work { get; init; }

    public long Ordinal { get; init; }

    public required string Kind { get; init; }

    public required string Extent { get; init; }

    public long? Intended { get; init; }

    public string? Declared { get; init; }

    public string? DeclaredEarliest { get; init; }

    public string? DeclaredLatest { get; init; }

    public required string Closed { get; init; }

    public string? ClosedOn { get; init; }

    public string? ClosedEarliest { get; init; }

    public string? ClosedLatest { get; init; }

    public string? Note { get; init; }

    public long V { get; init; }

    public WorkRow OfWork { get; init; } = null!;
}

internal sealed class EditionMapping : IEntityTypeConfiguration<EditionRow>
{
    public void Configure(EntityTypeBuilder<EditionRow> row)
    {
        row.ToTable("edition");
        row.HasOne(one => one.OfWork).WithMany().HasForeignKey(one => one.Work);
    }
}
