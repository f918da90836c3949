using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>An impression as its row stands; to be read, never written.</summary>
public sealed class ImpressionRow
{
    public long Id { get; init; }

    public long Run { get; init; }

    public long Ordinal { get; init; }

    public required string Code { get; init; }

    public required string Standing { get; init; }

    public string? Fault { get; init; }

    public string? FaultNote { get; init; }

    public long? Numbering { get; init; }

    public long? Number { get; init; }

    public string? Pencilled { get; init; }

    public string? Titled { get; init; }

    public required string Signed { get; init; }

    public string? Signature { get; init; }

    public string? Condition { get; init; }

    public required string ForSale { get; init; }

    public long? Asking { get; init; }

    public string? AskingCurrency { get; init; }

    public string? Note { get; init; }

    public long V { get; init; }

    public PrintRunRow InRun { get; init; } = null!;

    public NumberingRow? InNumbering { get; init; }
}

internal sealed class ImpressionMapping : IEntityTypeConfiguration<ImpressionRow>
{
    public void Configure(EntityTypeBuilder<ImpressionRow> row)
    {
        row.ToTable("impression");
        row.HasOne(one => one.InRun).WithMany().HasForeignKey(one => one.Run);
        row.HasOne(one => one.InNumbering).WithMany().HasForeignKey(one => one.Numbering);
    }
}
