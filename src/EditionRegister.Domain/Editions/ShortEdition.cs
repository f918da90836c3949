using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>What came of ending an edition that was printed short of its size.</summary>
/// <param name="Word">reset: the size was mended down; disclosed: the numbers stay and are said to be never printed.</param>
/// <param name="NeverPrinted">How many numbers there is no sheet for.</param>
/// <param name="ToPencilAnew">Sheets whose pencilled number was cleared from the record, because it says the size that is no more, or that got another number.</param>
public sealed record FellShort(string Word, int NeverPrinted, IReadOnlyList<Impression> ToPencilAnew);

/// <summary>
/// Ends an edition of which fewer were printed than declared. While nothing is signed or has left the size is set anew, so that the number
/// behind the stroke is what was printed; afterwards the numbers stay, and it is disclosed that they were never printed.
/// After the stipulations of a lithography workshop: a run that fails is numbered as a short edition.
/// </summary>
public static class ShortEdition
{
    /// <exception cref="RefusedException">edition-closed-already, short-edition-not-ours-whole, edition-not-short or nothing-printed.</exception>
    public static FellShort End(Work work, Edition edition, string? note, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);
        ArgumentNullException.ThrowIfNull(deed);
        var numberings = Short(work, edition);
        var never = numberings.Sum(numbering => Open(work, numbering).Count);
        var mayBeSet = !Leaving.HasBegun(work, edition)
            && work.Impressions.All(sheet => sheet.ValidCertificate is null || work.EditionOf(sheet)?.Id != edition.Id)
            && numberings.All(numbering => numbering.Numbers.All(slot => slot.Fate is "open" or "unknown"));

        return mayBeSet ? SetAnew(work, edition, numberings, never, deed) : Disclose(work, edition, numberings, never, note, deed);
    }

    private static List<Numbering> Short(Work work, Edition edition)
    {
        if (edition.IsClosed)
        {
            throw EditionRefusals.Closed(work);
        }

        if (!edition.IsWhole)
        {
            throw EditionRefusals.NotOursToShorten(work);
        }

        var numberings = edition.Numberings.Where(numbering => numbering is { Kind.InSize: true, Size: not null } && Open(work, numbering).Count > 0).ToList();

        return numberings.Count == 0 ? throw EditionRefusals.NothingShort(work)
            : numberings.Find(numbering => Sheets(work, numbering).Count == 0) is { } unbegun ? throw EditionRefusals.NothingPrinted(unbegun, work)
            : numberings;
    }

    private static FellShort SetAnew(Work work, Edition edition, List<Numbering> numberings, int never, Deed deed)
    {
        List<Impression> anew = [];

        foreach (var numbering in numberings)
        {
            var sheets = Sheets(work, numbering);
            deed.Set("numbering", numbering.Id, ("size", sheets.Count), ("size_state", "stated"));

            // Sheets above the new size move down into the gaps, lowest first, so that no number is ever on two of them.
            for (var i = 0; i < sheets.Count; i++)
            {
                if (sheets[i].Number != i + 1)
                {
                    deed.Set("impression", sheets[i].Id, ("number", i + 1));
                }

                if (!string.IsNullOrWhiteSpace(sheets[i].Pencilled))
                {
                    deed.SetPencilled(sheets[i].Id, null, work.OwnWords);
                    anew.Add(sheets[i]);
                }
            }

            foreach (var slot in numbering.Numbers.Where(slot => slot.Ordinal > sheets.Count))
            {
                deed.Unset("number", slot.Id);
            }
        }

        deed.Set("edition", edition.Id, ("fell_short", "reset"), ("intended", edition.Intended ?? edition.Size));

        return new FellShort("reset", never, anew);
    }

    private static FellShort Disclose(Work work, Edition edition, List<Numbering> numberings, int never, string? note, Deed deed)
    {
        foreach (var slot in numberings.SelectMany(numbering => Open(work, numbering)))
        {
            deed.Set("number", slot.Id, ("fate", "never-printed"), ("note", note));
        }

        deed.Set("edition", edition.Id, ("fell_short", "disclosed"));

        return new FellShort("disclosed", never, []);
    }

    private static List<NumberSlot> Open(Work work, Numbering numbering)
    {
        var given = Sheets(work, numbering).Select(sheet => sheet.Number).ToHashSet();

        return [.. numbering.Numbers.Where(slot => slot.Fate is "open" or "unknown" && !given.Contains(slot.Ordinal))];
    }

    private static List<Impression> Sheets(Work work, Numbering numbering) =>
        [.. work.Impressions.Where(sheet => sheet.Numbering == numbering.Id && sheet.Number is not null).OrderBy(sheet => sheet.Number)];
}
