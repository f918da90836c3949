using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A kind of numbering as its row stands; to be read, never written.</summary>
public sealed class NumberingKindRow
{
    public long Id { get; init; }

    public required string Word { get; init; }

    public required string Mark { get; init; }

    public required string Name { get; init; }

    public required string InSize { get; init; }

    public required string InTotal { get; init; }

    public required string ForSale { get; init; }

    public long V { get; init; }
}

internal sealed class NumberingKindMapping : IEntityTypeConfiguration<NumberingKindRow>
{
    public void Configure(EntityTypeBuilder<NumberingKindRow> row) => row.ToTable("numbering_kind");
}
