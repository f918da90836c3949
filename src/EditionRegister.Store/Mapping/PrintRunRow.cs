using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EditionRegister.Store.Mapping;

/// <summary>A print run as its row stands; to be read, never written.</summary>
public sealed class PrintRunRow
{
    public long Id { get; init; }

    public long Work { get; init; }

    public long Ordinal { get; init; }

    public required string Purpose { get; init; }

    public string? Paper { get; init; }

    public string? State { get; init; }

    public string? Printed { get; init; }

    public string? PrintedEarliest { get; init; }

    public string? PrintedLatest { get; init; }

    public long? Started { get; init; }

    public long? Spoiled { get; init; }

    public long? Unused { get; init; }

    public long? HeldOut { get; init; }

    public long? ImageHeight { get; init; }

    public long? ImageWidth { get; init; }

    public long? SheetHeight { get; init; }

    public long? SheetWidth { get; init; }

    public string? Note { get; init; }

    public long V { get; init; }

    public WorkRow OfWork { get; init; } = null!;
}

internal sealed class PrintRunMapping : IEntityTypeConfiguration<PrintRunRow>
{
    public void Configure(EntityTypeBuilder<PrintRunRow> row)
    {
        row.ToTable("print_run");
        row.HasOne(one => one.OfWork).WithMany().HasForeignKey(one => one.Work);
    }
}
