using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>An edition of ours that was known in part becomes whole once nothing of it is unknown.</summary>
public static class MakingWhole
{
    /// <exception cref="RefusedException">edition-not-all-known with everything that is not, edition-whole-already, edition-not-ours-whole.</exception>
    public static void Make(Work work, Edition edition, Deed deed)
    {
        if (edition.IsWhole)
        {
            throw EditionRefusals.WholeAlready(work);
        }

        if (!edition.IsOurs)
        {
            throw EditionRefusals.NotOursToClose(work);
        }

        if (edition.Numberings.SelectMany(numbering => NotKnown(work, numbering)).ToList() is { Count: > 0 } missing)
        {
            throw EditionRefusals.NotAllKnown(work, missing);
        }

        deed.Set("edition", edition.Id, ("extent", "whole"), ("closed", "no"));

        // A number that a sheet has needs no word about its fate any more.
        foreach (var slot in edition.Numberings.SelectMany(numbering => numbering.Numbers).Where(slot => slot.Fate == "unknown"))
        {
            deed.Set("number", slot.Id, ("fate", "open"));
        }
    }

    private static IEnumerable<string> NotKnown(Work work, Numbering numbering)
    {
        if (numbering.SizeState == "unknown")
        {
            yield return $"how many there are of {numbering.Kind?.Name ?? numbering.KindWord} is not known";
            yield break;
        }

        var given = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id).Select(sheet => sheet.Number).ToHashSet();
        var unknown = numbering.Numbers
            .Where(slot => slot.Fate == "unknown" && !given.Contains(slot.Ordinal))
            .Select(slot => numbering.Spell(slot.Ordinal) ?? numbering.KindWord)
            .ToList();

        if (unknown.Count > 0)
        {
            yield return $"nobody has said what became of {string.Join(", ", unknown)}";
        }
    }
}
