using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Sets;

/// <summary>Putting sheets into the copies of a set: one sheet of each part into each copy. A sheet that lies elsewhere is brought to its copy.</summary>
/// <param name="set">The set whole.</param>
/// <param name="date">The day it was done.</param>
/// <param name="deed">Where the facts of the set go.</param>
public sealed class Gathering(Work set, RecordedDate date, Deed deed)
{
    private readonly HashSet<(long Copy, long Part)> _filled =
        [.. set.Impressions.SelectMany(copy => copy.SetSheets.Where(sheet => sheet.IsIn).Select(sheet => (copy.Id, sheet.Work)))];

    private readonly HashSet<long> _put = [];

    /// <summary>How many sheets were put in.</summary>
    public int Count => _put.Count;

    public bool Has(Impression copy, Work part) => _filled.Contains((copy.Id, part.Id));

    /// <summary>The sheet of a part that has the number of a copy; null where the part has no such sheet.</summary>
    public Impression? SameNumber(Impression copy, Work part)
    {
        if (set.NumberingOf(copy) is not { Kind: { } kind } numbered || copy.Number is not { } number)
        {
            throw SetRefusals.CopyHasNoNumber(set, copy);
        }

        var ofKind = part.Editions.SelectMany(edition => edition.Numberings).Where(numbering => numbering.Kind == kind).ToList();
        var numbering = ofKind.FirstOrDefault(one => one.Notation == numbered.Notation) ?? (ofKind is [var only] ? only : null);

        return numbering is null ? null : part.Impressions.FirstOrDefault(sheet => sheet.Numbering == numbering.Id && sheet.Number == number);
    }

    /// <param name="copy">One of the set's own sheets.</param>
    /// <param name="part">The work the sheet is of.</param>
    /// <param name="sheet">What is put in.</param>
    /// <param name="onPart">Where the facts of the part go.</param>
    /// <exception cref="RefusedException">One of <see cref="SetRefusals"/>, or of a chain that cannot go on so.</exception>
    public void Put(Impression copy, Work part, Impression sheet, Deed onPart)
    {
        ArgumentNullException.ThrowIfNull(copy);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(onPart);

        Possible(copy, part, sheet);
        Bring(copy, part, sheet, onPart);

        var before = copy.SetSheets.FirstOrDefault(one => one.Sheet == sheet.Id);
        deed.Set("set_sheet", before?.Id ?? deed.NewId("set_sheet"), ("copy", copy.Id), ("sheet", sheet.Id), ("standing", "in"));
        _filled.Add((copy.Id, part.Id));
        _put.Add(sheet.Id);
    }

    private void Possible(Impression copy, Work part, Impression sheet)
    {
        if (!MayBear(set, copy))
        {
            throw SetRefusals.NoCopy(set, copy);
        }

        if (SetDeeds.Of(set).Parts.All(known => known.Work != part.Id))
        {
            throw SetRefusals.NotAPart(set, part);
        }

        if (sheet.Standing == "left-out")
        {
            throw SetRefusals.LeftOut(part, sheet);
        }

        if (sheet.InSet is { } lies)
        {
            throw SetRefusals.InACopy(part, sheet, lies);
        }

        if (Has(copy, part) || _put.Contains(sheet.Id))
        {
            throw SetRefusals.HasThePart(set, copy, part);
        }

        if (sheet.Whose is { State: "known", Person: { } owner } && sheet.Whose != copy.Whose && !IsMakers(part, owner) && !IsMakers(set, owner))
        {
            throw SetRefusals.NotOurs(part, sheet);
        }
    }

    /// <summary>Afterwards it is where its copy is, as far as that is known.</summary>
    private void Bring(Impression copy, Work part, Impression sheet, Deed onPart)
    {
        if (sheet.Where == copy.Where && sheet.Where is not { State: "gone" })
        {
            return;
        }

        if (!IsAtHand(part, sheet.Where))
        {
            throw SetRefusals.NotHere(part, sheet);
        }

        if (!IsAtHand(set, copy.Where))
        {
            throw SetRefusals.CopyNotHere(set, copy);
        }

        if (copy.Where is { State: "placed" or "with" } to)
        {
            ChainDates.RunForwards(part, sheet, date, sheet.Whereabouts.Select(link => (link.Kind, link.Moved)));
            ChainFacts.Move(sheet.Id, sheet.Whereabouts.Count + 1, MoveKind.PutAway, sheet.Where, to, date, onPart);
        }
    }

    private static bool MayBear(Work work, Impression copy) => copy.IsKept || (copy.Standing == "held-out" && work.NumberingOf(copy) is not null);

    private bool IsAtHand(Work work, Position? where) => where switch
    {
        { State: "gone" } => false,
        { State: "with", Holder: { } holder } => IsMakers(work, holder) || IsMakers(set, holder),
        _ => true,
    };

    private static bool IsMakers(Work work, long person) => work.Makers.Any(maker => maker.Id == person);
}
