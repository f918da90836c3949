using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Inventory;

/// <summary>
/// What sheets are worth by what the register says: the value agreed when a sheet went to where it is, else what is asked for it. Listed for an insurer to
/// look at; it values nothing by itself.
/// </summary>
public sealed record InsuranceSchedule(IReadOnlyList<ScheduleLine> Lines)
{
    /// <summary>Sheets that are gone for good stand on no schedule.</summary>
    public static InsuranceSchedule Of(IEnumerable<InventorySheet> sheets) =>
        new([.. InventoryOrder.Sorted(sheets.Where(sheet => sheet.Impression.Where is not { State: "gone" })).Select(sheet => ScheduleLine.Of(sheet.Work, sheet.Impression))]);

    /// <summary>By currency; amounts of different currencies are never added.</summary>
    public IReadOnlyList<ScheduleSum> Sums { get; } =
    [
        .. Lines.Where(line => line.Value is not null)
            .GroupBy(line => line.Currency!, StringComparer.Ordinal)
            .OrderBy(same => same.Key, StringComparer.Ordinal)
            .Select(same => new ScheduleSum(same.Key, same.Sum(line => (decimal)line.Value!.Value), same.Count())),
    ];

    public int WithoutValue => Lines.Count(line => line.Value is null);
}

/// <summary>What sheets of one currency come to, in its minor units.</summary>
public sealed record ScheduleSum(string Currency, decimal MinorUnits, int Sheets);

/// <summary>One sheet of a schedule.</summary>
/// <param name="Work">Its work.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Value">In minor units of the currency; null where nothing is said.</param>
/// <param name="Currency">ISO 4217.</param>
/// <param name="Basis">agreed, asking or none.</param>
public sealed record ScheduleLine(Work Work, Impression Sheet, long? Value, string? Currency, string Basis)
{
    public static ScheduleLine Of(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);

        return sheet.Whereabouts is [.., { Value: { } agreed, ValueCurrency: { } of }] ? new ScheduleLine(work, sheet, agreed, of, "agreed")
            : sheet is { Asking: { } asking, AskingCurrency: { } currency } ? new ScheduleLine(work, sheet, asking, currency, "asking")
            : new ScheduleLine(work, sheet, null, null, "none");
    }
}
