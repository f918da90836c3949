using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Shows;

/// <summary>Listing sheets for a show, and taking them off its list again.</summary>
public static class ShowDeeds
{
    /// <summary>Lists sheets at the end, in the order named. One that is sold or away may hang as well; one that is left out may not.</summary>
    /// <exception cref="RefusedException">show-lists-already or show-sheet-left-out.</exception>
    public static void Add(Show show, IReadOnlyList<Impression> sheets, Deed deed)
    {
        var last = show.Listings.Count == 0 ? 0 : show.Listings.Max(listing => listing.Ordinal);

        foreach (var sheet in sheets)
        {
            if (sheet.Standing == "left-out")
            {
                throw ShowRefusals.LeftOut(show, sheet);
            }

            var before = show.ListingOf(sheet.Id);

            if (before is { IsListed: true })
            {
                throw ShowRefusals.ListedAlready(show, sheet);
            }

            if (before is not null)
            {
                deed.Set("show_impression", before.Id, ("standing", "listed"));
            }
            else
            {
                deed.Set("show_impression", deed.NewId("show_impression"),
                    ("show", show.Id), ("impression", sheet.Id), ("ordinal", ++last), ("standing", "listed"));
            }
        }
    }

    /// <summary>Takes sheets off the list; that they were on it stays on record.</summary>
    /// <exception cref="RefusedException">show-does-not-list.</exception>
    public static void Remove(Show show, IReadOnlyList<Impression> sheets, Deed deed)
    {
        foreach (var sheet in sheets)
        {
            var listing = show.ListingOf(sheet.Id) is { IsListed: true } found ? found : throw ShowRefusals.NotListed(show, sheet);
            deed.Set("show_impression", listing.Id, ("standing", "taken-off"));
        }
    }

    internal static void Sound(string name, string kind, RecordedDate opens, RecordedDate closes)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            throw ShowRefusals.NoName();
        }

        if (!ShowKind.Words.Contains(kind))
        {
            throw ShowRefusals.UnknownKind(kind);
        }

        if (closes.SurelyBefore(opens))
        {
            throw ShowRefusals.DatesCrossed(opens, closes);
        }
    }
}
