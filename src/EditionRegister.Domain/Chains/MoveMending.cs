using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>
/// Sets the tail of a sheet's whereabouts anew: a step put right, one learned of late put in between, or one that never was taken out. Every step
/// goes on from where the one before ends.
/// </summary>
public static class MoveMending
{
    private const string Table = "whereabouts";

    /// <param name="work">The work.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="step">Its place in the chain, from one.</param>
    /// <param name="right">What it should say.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">One of <see cref="MendingRefusals"/>.</exception>
    public static void PutRight(Work work, Impression sheet, int step, MoveCorrection right, Deed deed)
    {
        var links = sheet.Whereabouts;
        var link = At(sheet, step);
        KindFits(sheet, step, right.Kind);
        var to = right.To ?? (right.Kind is null ? link.To : EndOf(right.Kind, link.To));
        ChainAsMeant.Holds(work, sheet, [.. links.Select(one => one == link ? (right.Kind ?? KindOf(one), to, right.Date ?? one.Moved) : As(one))]);

        Set(link.Id, right, to == link.To ? null : to, sheet, deed);

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
    public static void PutBetween(Work work, Impression sheet, int after, MoveCorrection late, Deed deed)
    {
        var links = sheet.Whereabouts;
        var before = At(sheet, after);
        var kind = late.Kind ?? MoveKind.PutAway;
        KindFits(sheet, after + 1, kind);
        var to = late.To ?? EndOf(kind, before.To);
        ChainAsMeant.Holds(work, sheet, [.. links.Take(after).Select(As), (kind, to, late.Date ?? RecordedDate.None), .. links.Skip(after).Select(As)]);

        // From the last backwards, so that no two steps have one place at any moment.
        for (var at = links.Count; at > after; at--)
        {
            deed.Set(Table, links[at - 1].Id, ("ordinal", at + 1));
        }

        var link = ChainFacts.Move(sheet.Id, after + 1, kind, before.To, to, late.Date ?? RecordedDate.None, deed);
        Terms(link, late, deed);

        if (after < links.Count)
        {
            From(links[after].Id, to, deed);
        }
    }

    /// <summary>Takes out a step that never was. The first one stays.</summary>
    /// <exception cref="RefusedException">One of <see cref="MendingRefusals"/>.</exception>
    public static void TakeOut(Work work, Impression sheet, int step, Deed deed)
    {
        var links = sheet.Whereabouts;
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

    /// <summary>The facts that a correction of a step sets, with what they are to be; dates as they are written.</summary>
    public static IEnumerable<(string Fact, FactValue Value)> Changes(MoveCorrection right) => new (string Fact, FactValue Value)[]
    {
        ("kind", right.Kind?.Word), ("to_state", right.To?.State), ("to_place", right.To?.Place), ("to_holder", right.To?.Holder), ("moved", right.Date?.Text), ("until", right.Until?.Text),
        ("rate", right.Rate), ("agreement", right.Agreement), ("note", right.Note),
    }.Where(change => !change.Value.IsNull);

    private static void Set(long id, MoveCorrection right, Position? to, Impression sheet, Deed deed)
    {
        if (!Changes(right).Any())
        {
            throw MendingRefusals.NothingPutRight(sheet);
        }

        if (right.Kind is { } kind)
        {
            deed.Set(Table, id, ("kind", kind.Word));
        }

        if (to is not null)
        {
            deed.Set(Table, id, ("to_state", to.State), ("to_place", to.Place), ("to_holder", to.Holder));
        }

        if (right.Date is { } date)
        {
            deed.SetDate(Table, id, "moved", date);
        }

        Terms(id, right, deed);
    }

    private static void Terms(long id, MoveCorrection right, Deed deed)
    {
        if (right.Until is { } until)
        {
            deed.SetDate(Table, id, "until", until);
        }

        foreach (var (fact, value) in Changes(right).Where(change => change.Fact is "rate" or "agreement" or "note"))
        {
            deed.Set(Table, id, (fact, value));
        }
    }

    private static void From(long id, Position from, Deed deed) =>
        deed.Set(Table, id, ("from_state", from.State), ("from_place", from.Place), ("from_holder", from.Holder));

    private static WhereaboutsLink At(Impression sheet, int step) =>
        step >= 1 && step <= sheet.Whereabouts.Count ? sheet.Whereabouts[step - 1] : throw MendingRefusals.NoSuchStep(sheet, step, sheet.Whereabouts.Count);

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

    /// <summary>Where a kind of move ends by itself: nobody knows where what is lost is, and what is destroyed is gone.</summary>
    private static Position EndOf(MoveKind kind, Position otherwise) =>
        kind.IsMissing ? Position.Unknown : kind == MoveKind.Destroyed ? Position.Gone : otherwise;

    private static MoveKind KindOf(WhereaboutsLink link) => MoveKind.Of(link.Kind) ?? MoveKind.PutAway;

    private static (MoveKind Kind, Position To, RecordedDate Date) As(WhereaboutsLink link) => (KindOf(link), link.To, link.Moved);
}
