using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Sets the tail of a sheet's ownership anew: a step put right, one learned of late put in between, or one that never was taken out.</summary>
public static class TransferMending
{
    private const string Table = "ownership";

    /// <param name="work">The work.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="step">Its place in the chain, from one.</param>
    /// <param name="right">What it should say.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">One of <see cref="MendingRefusals"/>.</exception>
    public static void PutRight(Work work, Impression sheet, int step, TransferCorrection right, Deed deed)
    {
        var links = sheet.Ownership;
        var link = At(sheet, step);
        KindFits(sheet, step, right.Kind);

        if (!Changes(right).Any())
        {
            throw MendingRefusals.NothingPutRight(sheet);
        }

        if ((right.Net ?? link.Net) > (right.Price ?? link.Price))
        {
            throw ChainRefusals.NetAbovePrice();
        }

        var to = right.To ?? link.To;
        ChainAsMeant.Holds(work, sheet, [.. links.Select(one => one == link ? (right.Kind ?? KindOf(one), to, right.Date ?? one.Passed) : As(one))]);
        Set(link.Id, right, link.Currency, deed);

        if (to != link.To && step < links.Count)
        {
            From(links[step].Id, to, deed);
        }
    }

    /// <param name="work">The work.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="after">The step it comes after, from one.</param>
    /// <param name="late">What happened.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">One of <see cref="MendingRefusals"/>.</exception>
    public static void PutBetween(Work work, Impression sheet, int after, TransferCorrection late, Deed deed)
    {
        var links = sheet.Ownership;
        var before = At(sheet, after);
        var (kind, to, date) = (late.Kind ?? MoveKind.Sold, late.To ?? Owner.Unknown, late.Date ?? RecordedDate.None);
        KindFits(sheet, after + 1, kind);

        if (late.Net > late.Price)
        {
            throw ChainRefusals.NetAbovePrice();
        }

        ChainAsMeant.Holds(work, sheet, [.. links.Take(after).Select(As), (kind, to, date), .. links.Skip(after).Select(As)]);

        // From the last backwards, so that no two steps have one place at any moment.
        for (var at = links.Count; at > after; at--)
        {
            deed.Set(Table, links[at - 1].Id, ("ordinal", at + 1));
        }

        var link = ChainFacts.Pass(sheet.Id, after + 1, kind, before.To, to, date, deed);
        Set(link, late with { Kind = null, To = null, Date = null }, null, deed);

        if (after < links.Count)
        {
            From(links[after].Id, to, deed);
        }
    }

    /// <summary>Takes out a step that never was. The first one stays.</summary>
    /// <exception cref="RefusedException">One of <see cref="MendingRefusals"/>.</exception>
    public static void TakeOut(Work work, Impression sheet, int step, Deed deed)
    {
        var links = sheet.Ownership;
        var link = At(sheet, step);

        if (step == 1)
        {
            throw MendingRefusals.FirstStepsKind(sheet);
        }

        ChainAsMeant.Holds(work, sheet, [.. links.Where(one => one != link).Select(As)]);

        if (step < links.Count)
        {
            // To the end of the chain first, where nothing follows it; the others close up, and then it goes.
            deed.Set(Table, link.Id, ("ordinal", links.Count + 1));
            From(link.Id, links[^1].To, deed);

            for (var at = step + 1; at <= links.Count; at++)
            {
                deed.Set(Table, links[at - 1].Id, ("ordinal", at - 1));
            }

            From(links[step].Id, links[step - 2].To, deed);
        }

        deed.Unset(Table, link.Id);
    }

    /// <summary>The facts that a correction of a step sets, with what they are to be; a date as it is written.</summary>
    public static IEnumerable<(string Fact, FactValue Value)> Changes(TransferCorrection right) => new (string Fact, FactValue Value)[]
    {
        ("kind", right.Kind?.Word), ("to_state", right.To?.State), ("to_owner", right.To?.Person), ("passed", right.Date?.Text),
        ("agent", right.Agent), ("price", right.Price), ("net", right.Net), ("note", right.Note),
    }.Where(change => !change.Value.IsNull);

    private static void Set(long id, TransferCorrection right, string? currency, Deed deed)
    {
        if (right.Kind is { } kind)
        {
            deed.Set(Table, id, ("kind", kind.Word));
        }

        if (right.To is { } to)
        {
            deed.Set(Table, id, ("to_state", to.State), ("to_owner", to.Person));
        }

        if (right.Date is { } date)
        {
            deed.SetDate(Table, id, "passed", date);
        }

        if ((right.Price ?? right.Net) is not null)
        {
            deed.Set(Table, id, ("currency", right.Currency ?? currency));
        }

        foreach (var (fact, value) in Changes(right).Where(change => change.Fact is "agent" or "price" or "net" or "note"))
        {
            deed.Set(Table, id, (fact, value));
        }
    }

    private static void From(long id, Owner from, Deed deed) => deed.Set(Table, id, ("from_state", from.State), ("from_owner", from.Person));

    private static OwnershipLink At(Impression sheet, int step) =>
        step >= 1 && step <= sheet.Ownership.Count ? sheet.Ownership[step - 1] : throw MendingRefusals.NoSuchStep(sheet, step, sheet.Ownership.Count);

    private static void KindFits(Impression sheet, int step, MoveKind? kind)
    {
        if (kind is not null && step == 1)
        {
            throw MendingRefusals.FirstStepsKind(sheet);
        }

        if (kind is not null && (kind.Chain != Table || kind.IsFirst))
        {
            throw MendingRefusals.KindOfOtherChain(kind, Table);
        }
    }

    private static MoveKind KindOf(OwnershipLink link) => MoveKind.Of(link.Kind) ?? MoveKind.Sold;

    private static (MoveKind Kind, Owner To, RecordedDate Date) As(OwnershipLink link) => (KindOf(link), link.To, link.Passed);
}
