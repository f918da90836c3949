using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>One way for sheets to go somewhere: what kind of move, where to, and on what terms.</summary>
/// <param name="Kind">The kind of move.</param>
/// <param name="To">Where they are afterwards; null leaves them where they are.</param>
public sealed record Going(MoveKind Kind, Position? To)
{
    public RecordedDate Moved { get; init; } = RecordedDate.None;

    /// <summary>When they are to be back, or an answer is due.</summary>
    public RecordedDate Until { get; init; } = RecordedDate.None;

    /// <summary>The share of whoever sells them, in hundredths of a per cent.</summary>
    public int? Rate { get; init; }

    /// <summary>The agreement under which they go, as written.</summary>
    public string? Agreement { get; init; }

    /// <summary>What each is insured for, in minor units of <see cref="ValueCurrency"/>.</summary>
    public long? Value { get; init; }

    /// <summary>ISO 4217.</summary>
    public string? ValueCurrency { get; init; }

    /// <summary>The show they hang in, or null.</summary>
    public long? Show { get; init; }

    public string? Note { get; init; }

    /// <exception cref="RefusedException">One of <see cref="ChainRefusals"/> or <see cref="MoveRefusals"/>.</exception>
    public void Record(Work work, IReadOnlyList<Impression> sheets, Deed deed)
    {
        if (Until.SurelyBefore(Moved))
        {
            throw MoveRefusals.UntilBefore(Until, Moved);
        }

        foreach (var sheet in sheets)
        {
            Possible(work, sheet);
            var link = WhereaboutsDeeds.Move(work, sheet, Kind, To ?? sheet.Where ?? Position.Unknown, Moved, Note, deed);
            Terms(link, deed);
        }
    }

    private void Terms(long link, Deed deed)
    {
        (string Fact, FactValue Value)[] terms = [("rate", Rate), ("agreement", Agreement), ("value", Value), ("value_currency", Value is null ? null : ValueCurrency), ("show", Show)];

        foreach (var (fact, value) in terms.Where(term => !term.Value.IsNull))
        {
            deed.Set("whereabouts", link, (fact, value));
        }

        if (Until.IsKnown || Kind == MoveKind.Consigned)
        {
            deed.SetDate("whereabouts", link, "until", Until);
        }
    }

    private void Possible(Work work, Impression sheet)
    {
        if (Kind == MoveKind.SubConsigned)
        {
            if (Consignments.StandingOf(work, sheet) is null)
            {
                throw MoveRefusals.NotConsigned(sheet, WhereInWords.Of(work, sheet));
            }

            if (To?.Holder is { } to && Consignments.HandsOf(work, sheet).Contains(to))
            {
                throw MoveRefusals.AnswersForItAlready(sheet, WhereInWords.PersonNamed(to, work.Book));
            }
        }

        if (Kind == MoveKind.AwaitingCollection && Transfers.IsStillTheMakers(work, sheet))
        {
            throw MoveRefusals.NobodyToCollect(sheet, WhereInWords.OwnerOf(work, sheet));
        }
    }
}
