using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>A sheet passes to another owner without being sold: given, exchanged for something, or bequeathed.</summary>
/// <param name="Kind">given, exchanged or bequeathed.</param>
/// <param name="To">Null is somebody nobody knows.</param>
public sealed record Passing(MoveKind Kind, long? To)
{
    /// <summary>The owner; null is the maker, and for a bequest whoever owns it.</summary>
    public long? From { get; init; }

    public RecordedDate Date { get; init; } = RecordedDate.None;

    /// <summary>What it was exchanged for, as written.</summary>
    public string? Against { get; init; }

    public string? Note { get; init; }

    /// <summary>They took the sheet along.</summary>
    public bool Collected { get; init; }

    /// <summary>Also where the sheet is reserved for, or on approval with, somebody else.</summary>
    public bool DespiteReservation { get; init; }

    /// <exception cref="RefusedException">The giver does not own it, it is kept for another, or the dates run backwards.</exception>
    public void Record(Work work, IReadOnlyList<Impression> sheets, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            Transfers.MayPass(work, sheet, From ?? (Kind == MoveKind.Bequeathed ? sheet.Whose?.Person : null), To);
            ChainDates.RunForwards(work, sheet, Date, sheet.Ownership.Select(link => (link.Kind, link.Passed)));

            if (Kind != MoveKind.Bequeathed)
            {
                Reservations.Settle(work, sheet, To, agent: null, DespiteReservation, deed);
            }

            var to = To is { } owner ? Owner.Known(owner) : Owner.Unknown;
            var link = ChainFacts.Pass(sheet.Id, sheet.Ownership.Count + 1, Kind, sheet.Whose, to, Date, deed);
            deed.Set("ownership", link, ("note", Noted));

            if (Collected)
            {
                WhereaboutsDeeds.HandOver(work, sheet, to, Date, note: null, deed);
            }
        }
    }

    private string? Noted => Against is null ? Note : Note is null ? $"against {Against}" : $"against {Against}; {Note}";
}
