using System.Globalization;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Sets;

/// <summary>Why a set cannot be made, or a sheet not lie in it, so.</summary>
public static class SetRefusals
{
    public static RefusedException NotMade(Work work) =>
        new("set-not-made", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” is no set of prints. Nothing was changed. `edreg set list` shows the sets; make the work one with `edreg set make {work.Id}`."));

    public static RefusedException MadeAlready(Work work, PrintSet set) =>
        new("set-made-already", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” is a set already, a {SetForm.NameOf(set.Form)}. Nothing was changed. Put right what is recorded of it with `edreg set edit {work.Id}`."));

    public static RefusedException NothingToCorrect(Work work) =>
        new("set-correction-empty", $"Nothing was said that is to be put right of the set “{work.ShownTitle}”. Nothing was changed. Give --form, --signed-on or --note.");

    public static RefusedException PartHoldsSet(Work work, Work part) => part.Id == work.Id
        ? new("part-holds-the-set", $"“{work.ShownTitle}” cannot be a part of itself. Nothing was changed. Name another work.")
        : new("part-holds-the-set", $"“{part.ShownTitle}” has “{work.ShownTitle}” in it, so it cannot be a part of that in turn. Nothing was changed. Name another work.");

    public static RefusedException PartThere(Work work, Work part) =>
        new("part-there-already", string.Create(CultureInfo.InvariantCulture, $"“{part.ShownTitle}” is a part of “{work.ShownTitle}” already. Nothing was changed. `edreg set show {work.Id}` shows its parts."));

    public static RefusedException NotAPart(Work work, Work part) =>
        new("part-not-in-set", string.Create(CultureInfo.InvariantCulture, $"“{part.ShownTitle}” is no part of “{work.ShownTitle}”. Nothing was changed. Add it first with `edreg set part add {work.Id} {part.Id}`, or look whether it is another work."));

    public static RefusedException PartGathered(Work work, Work part, Impression copy) =>
        new("part-is-gathered", $"A sheet of “{part.ShownTitle}” lies in copy {work.NumberOf(copy)} of “{work.ShownTitle}” ({copy.ShownCode}), so the part stays. Nothing was changed. Take its sheets out first with `edreg set take-out`.");

    public static RefusedException NoParts(Work work) =>
        new("set-has-no-parts", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” has no parts yet, so there is nothing to gather. Nothing was changed. Say what it is made of with `edreg set part add {work.Id}`."));

    public static RefusedException NotOfTheSet(Work work, Impression copy) =>
        new("copy-not-of-the-set", $"{copy.ShownCode} is no copy of “{work.ShownTitle}”: the copies of a set are its own sheets. Nothing was changed. Name a copy by its number or its code.");

    public static RefusedException OneCopyOnly(Work work) =>
        new("one-copy-only", $"Sheets that are named go into one copy of “{work.ShownTitle}”, and several copies were. Nothing was changed. Name one copy.");

    public static RefusedException NoCopy(Work work, Impression copy) =>
        new("copy-is-not-kept", $"{copy.ShownCode} of “{work.ShownTitle}” is {copy.Standing.Replace('-', ' ')}, so it is no copy that prints could lie in. Nothing was changed. Keep it first with `edreg sort kept`, or name another copy.");

    public static RefusedException CopyHasNoNumber(Work work, Impression copy) =>
        new("copy-has-no-number", $"{copy.ShownCode} of “{work.ShownTitle}” has no number yet, so it cannot be told which sheets belong to it. Nothing was changed. Number it first with `edreg number`, or name the sheets with --sheets.");

    public static RefusedException NoSuchNumber(Work work, Impression copy, Work part) =>
        new("part-lacks-the-number", string.Create(CultureInfo.InvariantCulture, $"No sheet of “{part.ShownTitle}” has the number of copy {work.NumberOf(copy)} of “{work.ShownTitle}”. Nothing was changed. Number its sheets first, gather the other parts alone with --part, or name the sheets with --sheets."));

    public static RefusedException LeftOut(Work part, Impression sheet) =>
        new("set-sheet-left-out", $"{sheet.ShownCode} of “{part.ShownTitle}” is left out, so it cannot lie in a copy. Nothing was changed. Name another sheet.");

    public static RefusedException InACopy(Work part, Impression sheet, SetMembership lies) =>
        new("sheet-in-a-copy", $"{part.NumberOf(sheet)} of “{part.ShownTitle}” ({sheet.ShownCode}) lies in copy {lies.CopyNumber} of “{lies.SetTitle}” already. Nothing was changed. Take it out first with `edreg set take-out`, or name another sheet.");

    public static RefusedException HasThePart(Work work, Impression copy, Work part) =>
        new("copy-has-the-part", $"Copy {work.NumberOf(copy)} of “{work.ShownTitle}” ({copy.ShownCode}) has its sheet of “{part.ShownTitle}” already. Nothing was changed. Take that out first with `edreg set take-out`, or name another copy.");

    public static RefusedException NotOurs(Work part, Impression sheet) =>
        new("set-sheet-not-ours", $"{part.NumberOf(sheet)} of “{part.ShownTitle}” ({sheet.ShownCode}) belongs to {WhereInWords.OwnerOf(part, sheet)}, and not to whom the copy belongs. Nothing was changed. Name another sheet.");

    public static RefusedException NotHere(Work part, Impression sheet) =>
        new("set-sheet-not-here", $"{part.NumberOf(sheet)} of “{part.ShownTitle}” ({sheet.ShownCode}) is not at hand: it is {WhereInWords.Of(part, sheet)}. Nothing was changed. Record first that it came back, or name another sheet.");

    public static RefusedException CopyNotHere(Work work, Impression copy) =>
        new("copy-not-here", $"Copy {work.NumberOf(copy)} of “{work.ShownTitle}” ({copy.ShownCode}) is not at hand: it is {WhereInWords.Of(work, copy)}. Nothing was changed. Record first that it came back, or name another copy.");

    public static RefusedException InNoCopy(Work work, Impression sheet) =>
        new("sheet-in-no-copy", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} lies in no copy of “{work.ShownTitle}”. Nothing was changed. `edreg set show {work.Id}` shows what lies in which copy."));
}
