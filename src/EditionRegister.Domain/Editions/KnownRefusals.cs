using System.Globalization;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Why something known of an old edition, or of somebody else's, cannot be recorded so.</summary>
public static class KnownRefusals
{
    public static RefusedException OneNumbering(string numbers) =>
        new("numbers-of-one-numbering", $"“{numbers}” names more than one numbering, or a code. Nothing was changed. Name numbers of one numbering at a time, such as 1-14, 17; proofs are A/P I-III.");

    public static RefusedException Twice(string numbers) =>
        new("known-number-twice", $"“{numbers}” names a number twice. Nothing was changed. Name each number once.");

    public static RefusedException NotAnOldEdition(Work work) =>
        new("no-old-edition", $"“{work.ShownTitle}” has an edition already that is whole here or somebody else's. Nothing was changed. What became of single numbers is said with `edreg fate`; another old edition needs a work of its own.");

    public static RefusedException SizeNotSaid(Work work) =>
        new("old-size-not-said", $"How many numbers there are of “{work.ShownTitle}” was not said yet. Nothing was changed. Say it with --size, or --size-unknown where nobody knows.");

    public static RefusedException SizeOtherwise(Work work, int? stands, int said) =>
        new("old-size-otherwise", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” is recorded with {(stands is { } size ? $"{size} numbers" : "a size nobody knows")}, not {said}. Nothing was changed. Leave --size out, or mend the size first with `edreg mend`."));

    public static RefusedException Beyond(string spelled, int size) =>
        new("beyond-old-size", string.Create(CultureInfo.InvariantCulture, $"{spelled} lies beyond the {size} numbers there are. Nothing was changed. Correct the numbers or the size."));

    public static RefusedException NumberNotRead(string number) =>
        new("held-number-not-read", $"“{number}” is no number as it stands on a sheet. Nothing was changed. Write it as in 14/75, A/P II/V or B.A.T.; what reads otherwise goes into the note.");

    public static RefusedException WordsNameNoNumber(string number, string why) =>
        new("held-words-name-no-number", $"“{number}” cannot be taken for the number of a sheet: {why}. Nothing was changed. Write the number alone as it stands there, such as 14/75 or A/P II/V; or leave it out, and record the words with `edreg inscribe` and --inscription.");

    public static RefusedException TotalTooSmall(int total, int size) =>
        new("total-too-small", string.Create(CultureInfo.InvariantCulture, $"There cannot be {total} impressions in all where {size} are numbered. Nothing was changed. The total counts the numbered ones and every proof."));

    public static RefusedException IsOurs(Work work) =>
        new("held-is-ours", $"“{work.ShownTitle}” by {work.ShownMaker} has an edition of your own in this register. Nothing was changed. Record what is known of it with `edreg known`, or give somebody else's work its own title or maker.");
}
