using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A place as its row stands; to be read, never written.</summary>
public sealed class PlaceRow
{
    public long Id { get; init; }

    public string? Name { get; init; }

    public long? Inside { get; init; }

    public long? Keeper { get; init; }

    public string? Note { get; init; }

    public string? Search { get; init; }

    public long V { get; init; }
}

internal sealed class PlaceMapping : IEntityTypeConfiguration<PlaceRow>
{
    public void Configure(EntityTypeBuilder<PlaceRow> row) => row.ToTable("place");
}
