using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Where sheets go: put away, consigned, returned, handed to their owner.</summary>
public static class WhereaboutsDeeds
{
    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What is put away.</param>
    /// <param name="place">Where.</param>
    /// <param name="date">When.</param>
    /// <param name="note">As written.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <param name="withCopy">They only go with the copy of a set they lie in: whoever has it has them.</param>
    public static void PutAway(Work work, IReadOnlyList<Impression> sheets, long place, RecordedDate date, string? note, Deed deed, bool withCopy = false)
    {
        foreach (var sheet in sheets)
        {
            if (!withCopy && sheet.Where is { State: "with", Holder: { } holder } && !IsMakers(work, holder) && !IsKeptBy(work, place, holder))
            {
                throw ChainRefusals.WithSomeone(sheet, work.Book.NameOf(holder));
            }

            Move(work, sheet, MoveKind.PutAway, Position.InPlace(place), date, note, deed);
        }
    }

    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What goes.</param>
    /// <param name="terms">To whom and on what terms.</param>
    /// <param name="date">When.</param>
    /// <param name="deed">Where the facts go.</param>
    public static void Consign(Work work, IReadOnlyList<Impression> sheets, Consignment terms, RecordedDate date, Deed deed) =>
        new Going(MoveKind.Consigned, Position.With(terms.To)) { Moved = date, Until = terms.Until, Rate = terms.Rate, Agreement = terms.Agreement, Note = terms.Note }
            .Record(work, sheets, deed);

    /// <summary>Back from wherever it was for a time, into a place or to the maker.</summary>
    /// <param name="work">The work the sheets are of.</param>
    /// <param name="sheets">What comes back.</param>
    /// <param name="from">From whom, or null where that goes without saying.</param>
    /// <param name="place">Where it is put, or null for the maker's hands.</param>
    /// <param name="date">When.</param>
    /// <param name="note">As written.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <param name="home">The work whose maker's hands are meant: that of the copy they go with; null is their own.</param>
    public static void Return(Work work, IReadOnlyList<Impression> sheets, long? from, long? place, RecordedDate date, string? note, Deed deed, Work? home = null)
    {
        foreach (var sheet in sheets)
        {
            var where = WhereInWords.Of(work, sheet);

            if (from is { } named && sheet.Where?.Holder != named)
            {
                throw ChainRefusals.NotWith(sheet, work.Book.NameOf(named), where);
            }

            if (!IsAway(work, sheet) && sheet.Where is not { State: "gone" } && !IsMissing(sheet))
            {
                throw ChainRefusals.NotAway(sheet, where);
            }

            Move(work, sheet, MoveKind.Returned, Home(home ?? work, place), date, note, deed);
        }
    }

    /// <summary>Into the hands of its owner, known or not.</summary>
    public static void HandOver(Work work, Impression sheet, Owner owner, RecordedDate date, string? note, Deed deed) =>
        Move(work, sheet, MoveKind.Collected, owner.Person is { } person ? Position.With(person) : Position.Unknown, date, note, deed);

    /// <summary>Whoever has it, or whatever it was sent for, it is to come back from there.</summary>
    public static bool IsAway(Work work, Impression sheet) => sheet.Where switch
    {
        { State: "with", Holder: { } has } => !IsMakers(work, has),
        { State: "placed" or "unknown" } => MoveKind.Of(sheet.Whereabouts[^1].Kind) is { IsForATime: true },
        _ => false,
    };

    public static bool IsMissing(Impression sheet) => sheet.Whereabouts is [.., var last] && MoveKind.Of(last.Kind) is { IsMissing: true };

    /// <exception cref="RefusedException">sheet-is-gone, sheet-is-missing, is-there-already, or dates that run backwards.</exception>
    internal static long Move(Work work, Impression sheet, MoveKind kind, Position to, RecordedDate date, string? note, Deed deed)
    {
        var last = sheet.Whereabouts.Count == 0 ? null : sheet.Whereabouts[^1];

        if (sheet.Where is { State: "gone" } && kind != MoveKind.Found)
        {
            throw ChainRefusals.Gone(sheet);
        }

        if (IsMissing(sheet) && kind != MoveKind.Found && kind != MoveKind.Destroyed && (kind.Word == last!.Kind || !kind.IsMissing))
        {
            throw MoveRefusals.Missing(sheet, last!);
        }

        // The same hands on other terms are a step of their own: on approval, then consigned.
        if (sheet.Where == to && to != Position.Unknown && (kind == MoveKind.PutAway || kind.Word == last?.Kind))
        {
            throw ChainRefusals.ThereAlready(sheet, WhereInWords.Of(work, sheet));
        }

        ChainDates.RunForwards(work, sheet, date, sheet.Whereabouts.Select(link => (link.Kind, link.Moved)));
        var link = ChainFacts.Move(sheet.Id, sheet.Whereabouts.Count + 1, kind, sheet.Where, to, date, deed);
        deed.Set("whereabouts", link, ("note", note));

        return link;
    }

    internal static Position Home(Work work, long? place) =>
        place is { } put ? Position.InPlace(put) : work.Makers.FirstOrDefault() is { } maker ? Position.With(maker.Id) : Position.Unknown;

    internal static bool IsMakers(Work work, long person) => work.MakersAndEstate.Any(maker => maker.Id == person);

    internal static bool IsKeptBy(Work work, long place, long holder)
    {
        HashSet<long> met = [];

        for (long? at = place; at is { } here && met.Add(here) && work.Book.Places.TryGetValue(here, out var found); at = found.Inside)
        {
            if (found.Keeper == holder)
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>To whom sheets are consigned and on what terms; the rate is the consignee's share in hundredths of a per cent.</summary>
public sealed record Consignment(long To, RecordedDate Until, int? Rate, string? Note, string? Agreement = null);
