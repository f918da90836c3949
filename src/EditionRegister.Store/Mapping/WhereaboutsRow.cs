using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>One link of a sheet's whereabouts as its row stands; to be read, never written.</summary>
public sealed class WhereaboutsRow
{
    public long Id { get; init; }

    public long Impression { get; init; }

    public long Ordinal { get; init; }

    public required string Kind { get; init; }

    public string? FromState { get; init; }

    public long? FromPlace { get; init; }

    public long? FromHolder { get; init; }

    public required string ToState { get; init; }

    public long? ToPlace { get; init; }

    public long? ToHolder { get; init; }

    public string? Moved { get; init; }

    public string? MovedEarliest { get; init; }

    public string? MovedLatest { get; init; }

    public string? Until { get; init; }

    public string? UntilEarliest { get; init; }

    public string? UntilLatest { get; init; }

    public long? Rate { get; init; }

    public string? Note { get; init; }

    public long V { get; init; }
}

internal sealed class WhereaboutsMapping : IEntityTypeConfiguration<WhereaboutsRow>
{
    public void Configure(EntityTypeBuilder<WhereaboutsRow> row) => row.ToTable("whereabouts");
}
