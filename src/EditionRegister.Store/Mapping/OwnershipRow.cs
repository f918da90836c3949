using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>One link of a sheet's ownership as its row stands; to be read, never written.</summary>
public sealed class OwnershipRow
{
    public long Id { get; init; }

    public long Impression { get; init; }

    public long Ordinal { get; init; }

    public required string Kind { get; init; }

    public string? FromState { get; init; }

    public long? FromOwner { get; init; }

    public required string ToState { get; init; }

    public long? ToOwner { get; init; }

    public long? Agent { get; init; }

    public string? Passed { get; init; }

    public string? PassedEarliest { get; init; }

    public string? PassedLatest { get; init; }

    public long? Price { get; init; }

    public long? Net { get; init; }

    public string? Currency { get; init; }

    public string? Note { get; init; }

    public long V { get; init; }
}

internal sealed class OwnershipMapping : IEntityTypeConfiguration<OwnershipRow>
{
    public void Configure(EntityTypeBuilder<OwnershipRow> row) => row.ToTable("ownership");
}
