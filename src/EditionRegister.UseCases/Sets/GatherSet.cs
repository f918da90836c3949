using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Sets;

/// <summary>Puts sheets into the copies of a set: one entry for the set and one for each work whose sheets move, all under one batch.</summary>
public sealed class GatherSet(RegisterStore store)
{
    /// <summary>Into each copy the sheet of every part that has the copy's number. What a copy has already stays. Answers how many were put in.</summary>
    /// <param name="set">The set.</param>
    /// <param name="copies">Which copies; null is every numbered one.</param>
    /// <param name="parts">Which parts; none is all.</param>
    /// <param name="date">When; today when not said.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="SetRefusals"/>, or a choice that finds nothing.</exception>
    public int ByNumber(long set, ImpressionChoice? copies, IReadOnlyList<long>? parts = null, RecordedDate? date = null) => store.Write("gather-set", writing =>
    {
        var work = writing.Read.WorkOrRefuse(set);
        var wanted = PartsOf(writing, work, parts ?? []);
        Gathering gathering = new(work, date ?? Today.Of(store), writing.On(Root.Work(set)));

        foreach (var copy in CopiesOf(writing, work, copies))
        {
            foreach (var part in wanted.Where(part => !gathering.Has(copy, part)))
            {
                gathering.Put(copy, part, gathering.SameNumber(copy, part) ?? throw SetRefusals.NoSuchNumber(work, copy, part), writing.On(Root.Work(part.Id)));
            }
        }

        return gathering.Count;
    });

    /// <summary>These very sheets into one copy.</summary>
    /// <param name="set">The set.</param>
    /// <param name="copy">One of its copies.</param>
    /// <param name="sheets">What is put in.</param>
    /// <param name="date">When; today when not said.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="SetRefusals"/>, or a choice that finds nothing.</exception>
    public int ByHand(long set, ImpressionChoice copy, ImpressionChoice sheets, RecordedDate? date = null) => store.Write("gather-set", writing =>
    {
        var work = writing.Read.WorkOrRefuse(set);
        SetDeeds.Of(work);
        var into = CopiesOf(writing, work, copy).ToList() is [var only] ? only : throw SetRefusals.OneCopyOnly(work);
        Gathering gathering = new(work, date ?? Today.Of(store), writing.On(Root.Work(set)));

        foreach (var chosen in ImpressionsChosen.Find(writing.Read, sheets))
        {
            foreach (var sheet in chosen.Sheets)
            {
                gathering.Put(into, chosen.Work, sheet, writing.On(Root.Work(chosen.Work.Id)));
            }
        }

        return gathering.Count;
    });

    private static List<Work> PartsOf(Writing writing, Work work, IReadOnlyList<long> wanted)
    {
        var parts = SetDeeds.Of(work).Parts;

        foreach (var part in wanted.Where(part => parts.All(known => known.Work != part)))
        {
            throw SetRefusals.NotAPart(work, writing.Read.WorkOrRefuse(part));
        }

        return parts.Count == 0
            ? throw SetRefusals.NoParts(work)
            : [.. parts.Where(part => wanted.Count == 0 || wanted.Contains(part.Work)).Select(part => writing.Read.WorkOrRefuse(part.Work))];
    }

    private static IEnumerable<Impression> CopiesOf(Writing writing, Work work, ImpressionChoice? copies)
    {
        if (copies is null)
        {
            return work.Impressions.Where(sheet => sheet.Number is not null).ToList() is { Count: > 0 } numbered ? numbered : throw ImpressionRefusals.NothingChosen();
        }

        return ImpressionsChosen.Find(writing.Read, copies).SelectMany(chosen => chosen.Work.Id == work.Id ? chosen.Sheets : throw SetRefusals.NotOfTheSet(work, chosen.Sheets[0]));
    }
}
