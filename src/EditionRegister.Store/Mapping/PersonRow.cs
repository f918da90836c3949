using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A person as its row stands; to be read, never written.</summary>
public sealed class PersonRow
{
    public long Id { get; init; }

    public required string What { get; init; }

    public string? Name { get; init; }

    public string? SortName { get; init; }

    public required string Protected { get; init; }

    public required string PublicName { get; init; }

    public string? PublicWording { get; init; }

    public string? ClassCode { get; init; }

    public string? Contact { get; init; }

    public string? Note { get; init; }

    public required string Erased { get; init; }

    public string? Search { get; init; }

    public long V { get; init; }
}

internal sealed class PersonMapping : IEntityTypeConfiguration<PersonRow>
{
    public void Configure(EntityTypeBuilder<PersonRow> row) => row.ToTable("person");
}
