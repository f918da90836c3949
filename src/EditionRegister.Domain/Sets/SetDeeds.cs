using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Sets;

/// <summary>Making a work a set of parts, and saying what its parts are.</summary>
public static class SetDeeds
{
    /// <exception cref="RefusedException">set-made-already.</exception>
    public static void Make(Work work, string form, string signedOn, string? note, Deed deed)
    {
        if (work.Set is { } made)
        {
            throw SetRefusals.MadeAlready(work, made);
        }

        deed.Set("print_set", deed.NewId("print_set"), ("work", work.Id), ("form", form), ("signed_on", signedOn), ("note", note));
    }

    /// <summary>Puts right what was recorded of a set; null leaves it.</summary>
    /// <exception cref="RefusedException">set-not-made or set-correction-empty.</exception>
    public static void Correct(Work work, string? form, string? signedOn, string? note, Deed deed)
    {
        var set = Of(work);

        if ((form ?? signedOn ?? note) is null)
        {
            throw SetRefusals.NothingToCorrect(work);
        }

        deed.Set("print_set", set.Id, ("form", form ?? set.Form), ("signed_on", signedOn ?? set.SignedOn), ("note", note ?? set.Note));
    }

    /// <param name="work">The set.</param>
    /// <param name="part">What comes into it, behind the parts there are.</param>
    /// <param name="holds">Whether the part is a set that has the work in it, at whatever depth.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">set-not-made, part-there-already or part-holds-the-set.</exception>
    public static void AddPart(Work work, Work part, bool holds, Deed deed)
    {
        var set = Of(work);

        if (part.Id == work.Id || holds)
        {
            throw SetRefusals.PartHoldsSet(work, part);
        }

        if (set.Parts.Any(known => known.Work == part.Id))
        {
            throw SetRefusals.PartThere(work, part);
        }

        // A part that comes in the same deed as others stands behind them too.
        var ordinal = set.Parts.Select(known => known.Ordinal).DefaultIfEmpty().Max() + 1 + deed.Sets.Count(row => row.Table.Name == "set_part");
        deed.Set("set_part", deed.NewId("set_part"), ("print_set", set.Id), ("ordinal", ordinal), ("part", part.Id));
    }

    /// <exception cref="RefusedException">set-not-made, part-not-in-set or part-is-gathered.</exception>
    public static void RemovePart(Work work, Work part, Deed deed)
    {
        var set = Of(work);
        var known = set.Parts.FirstOrDefault(one => one.Work == part.Id) ?? throw SetRefusals.NotAPart(work, part);

        if (work.Impressions.FirstOrDefault(copy => copy.SetSheets.Any(sheet => sheet.IsIn && sheet.Work == part.Id)) is { } copy)
        {
            throw SetRefusals.PartGathered(work, part, copy);
        }

        deed.Unset("set_part", known.Id);
    }

    /// <summary>Takes a sheet out of the copy it lies in. It stays where it is.</summary>
    /// <exception cref="RefusedException">set-not-made or sheet-in-no-copy.</exception>
    public static void TakeOut(Work work, Impression sheet, Deed deed)
    {
        Of(work);
        var row = work.Impressions.SelectMany(copy => copy.SetSheets).FirstOrDefault(one => one.IsIn && one.Sheet == sheet.Id) ?? throw SetRefusals.InNoCopy(work, sheet);
        deed.Set("set_sheet", row.Id, ("standing", "taken-out"));
    }

    /// <exception cref="RefusedException">set-not-made.</exception>
    public static PrintSet Of(Work work) => work.Set ?? throw SetRefusals.NotMade(work);
}
