using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A number as its row stands; to be read, never written.</summary>
public sealed class NumberRow
{
    public long Id { get; init; }

    public long Numbering { get; init; }

    public long Ordinal { get; init; }

    public required string Fate { get; init; }

    public string? Note { get; init; }

    public long V { get; init; }
}

internal sealed class NumberMapping : IEntityTypeConfiguration<NumberRow>
{
    public void Configure(EntityTypeBuilder<NumberRow> row) => row.ToTable("number");
}
