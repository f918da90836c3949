using System.Globalization;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Why an edition cannot be declared, numbered or closed so.</summary>
public static class EditionRefusals
{
    public static RefusedException NoSuchEdition(long id) =>
        new("edition-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no edition {id} in this register. Nothing was changed. `edreg work list` shows the works and their editions."));

    public static RefusedException NoNumbering() =>
        new("numbering-missing", "An edition needs at least one numbering. Nothing was changed. Say how it is numbered, as in --numbering 1-12 --numbering \"A/P I-II\" --numbering B.A.T., or --numbering open.");

    public static RefusedException NumberingNotRead(string text) =>
        new("numbering-not-read", $"“{text}” is no numbering. Nothing was changed. Write its first and last number, with the mark before them: 1-12, A/P I-II, H.C. A-C, B.A.T., or open.");

    public static RefusedException WordsNotRead(string text, string why) =>
        new("edition-words-not-read", $"“{text}” cannot be taken for the numberings of an edition: {why}. Nothing was changed. Write each numbering out, as in 1-75 and A/P I-X, and keep the words with --statement.");

    public static RefusedException SizeUnsure(NumberingPlan plan, Work work) =>
        new("size-not-sure", $"The edition of “{work.ShownTitle}” is said to be {SizeNotSure.Of(plan.Hedge, plan.HedgedSize) ?? "of a size not known"}, and an edition of yours that is wholly here has its size, or is open. Nothing was changed. Say how many there are, as in --numbering 1-12, or that it is only partly known with --extent partly-known.");

    public static RefusedException NumberingFromOne(string text) =>
        new("numbering-from-one", $"Every numbering begins at one, and “{text}” does not. Nothing was changed. Write it from one to its size, as in 1-12.");

    public static RefusedException NumberingTwice(string text) =>
        new("numbering-twice", $"“{text}” is a second numbering of the same kind in the same notation. Nothing was changed. Two numberings of one kind stand side by side in different notations, as 1-40 and I-X do, or under a name, as in “deluxe: 1-10”.");

    public static RefusedException LimitedNeedsSize(Work work) =>
        new("limited-needs-size", $"A limited edition has a size, and the numbering of “{work.ShownTitle}” is open. Nothing was changed. Give its size, as in --numbering 1-12, or declare an open edition.");

    public static RefusedException OpenHasNoSize(Work work) =>
        new("open-has-no-size", $"An open edition has no size, and the numbering of “{work.ShownTitle}” has one. Nothing was changed. Say --numbering open, or declare a limited edition.");

    public static RefusedException UniqueIsOne() =>
        new("unique-is-one", "A unique work is one impression. Nothing was changed. Say --numbering 1-1, or declare a limited edition.");

    public static RefusedException ReductionEditionStands(Work work) =>
        new("reduction-edition-stands", $"“{work.ShownTitle}” is a reduction print and has its edition; the block was cut away in printing, so there can be no other. Nothing was changed. `edreg map` shows the edition it has.");

    public static RefusedException SecondEditionUndisclosed(Work work) =>
        new("edition-stands-already", $"“{work.ShownTitle}” has an edition already. Nothing was changed. A second edition must be disclosed as one: say so with --rank later, or with --rank restrike or posthumous where it is one.");

    public static RefusedException ReductionOnDemand(Work work) =>
        new("reduction-on-demand", $"“{work.ShownTitle}” is a reduction print: its block is cut away in printing, so no number of it can be printed later. Nothing was changed. Declare what was printed, without on demand.");

    public static RefusedException NumberingAmbiguous(string part, IEnumerable<Numbering> numberings, Work work) =>
        new("numbering-ambiguous", $"{part} of “{work.ShownTitle}” can be meant of several numberings: {string.Join("; ", numberings.Select(numbering => numbering.Span))}. Nothing was changed. Write the name before the number, as in “{numberings.First().Name}: {part}”.");

    public static RefusedException NotOfThisPrinting(Impression sheet, Edition edition, Work work) =>
        new("sheet-of-another-printing", $"{sheet.ShownCode} was pulled in a run {(edition.Rank is "restrike" or "posthumous" ? "for the edition" : "for a restrike")}, and edition {edition.Ordinal.ToString(CultureInfo.InvariantCulture)} of “{work.ShownTitle}” is {(edition.Rank is "restrike" or "posthumous" ? "a" : "no")} restrike: their numbers are never mixed. Nothing was changed. Choose sheets of its own run, or correct the purpose of the run.");

    public static RefusedException NothingShort(Work work) =>
        new("edition-not-short", $"Every number of the edition of “{work.ShownTitle}” is given or has its fate. Nothing was changed. `edreg map` shows them.");

    public static RefusedException NothingPrinted(Numbering numbering, Work work) =>
        new("nothing-printed", $"No sheet of “{work.ShownTitle}” has a number of {numbering.Span} yet, so it did not fall short: it has not begun. Nothing was changed. Number what was printed first with `edreg number`.");

    public static RefusedException NotOursToShorten(Work work) =>
        new("short-edition-not-ours-whole", $"The edition of “{work.ShownTitle}” is someone else's or only partly known here, so nobody here can say that it fell short. Nothing was changed. Say what is known of single numbers with `edreg fate`.");

    public static RefusedException NoSuchNumbering(string part, Work work) =>
        new("numbering-not-found", $"The edition of “{work.ShownTitle}” has no numbering for {part}. Nothing was changed. `edreg map` shows its numberings.");

    public static RefusedException BeyondSize(string part, Numbering numbering, Work work) =>
        new("number-beyond-size", $"{part} lies outside the numbering {numbering.Span} of “{work.ShownTitle}”. Nothing was changed. Choose a number within it.");

    public static RefusedException NumberGiven(string spelled, Impression sheet, Work work) =>
        new("number-given-already", $"{spelled} of “{work.ShownTitle}” is on {sheet.ShownCode} already. Nothing was changed. Choose an open number, or take that one back first.");

    public static RefusedException NumberNamedTwice(string spelled, Work work) =>
        new("number-named-twice", $"{spelled} of “{work.ShownTitle}” was named twice, and a number goes to one sheet. Nothing was changed. Name as many numbers as sheets, in the same order.");

    public static RefusedException NumberNotOpen(string spelled, string fate, Work work) =>
        new("number-not-open", $"{spelled} of “{work.ShownTitle}” is {fate.Replace('-', ' ')}, so no sheet can have it. Nothing was changed. Choose an open number.");

    public static RefusedException NotKept(Impression sheet) =>
        new("sheet-not-kept", $"{sheet.ShownCode} is {sheet.Standing.Replace('-', ' ')}, and only a kept sheet is numbered{(sheet.Standing == "left-out" ? ": a sheet left out never is" : " (or one held out, as a proof)")}. Nothing was changed. Sort it first with `edreg sort`.");

    public static RefusedException OfAnotherWork(Impression sheet, Work itsWork, Work work) =>
        new("sheet-of-another-work", $"{sheet.ShownCode} is a sheet of “{itsWork.ShownTitle}”, so it can bear no number of “{work.ShownTitle}”. Nothing was changed. Name the edition of its own work, or look whether it is another sheet.");

    public static RefusedException NumberedAlready(Impression sheet, Work work) =>
        new("sheet-numbered-already", $"{sheet.ShownCode} has the number {work.NumberOf(sheet)} already. Nothing was changed. Take it back first with `edreg number --take-back`.");

    public static RefusedException AllGiven(Numbering numbering, Work work) =>
        new("all-numbers-given", $"“{work.ShownTitle}” has no open number left in {numbering.Span}. Nothing was changed. For a spare to take the place of a number that is void, open that number again first with `edreg fate`.");

    public static RefusedException NothingToNumber(Work work) =>
        new("no-sheet-to-number", $"“{work.ShownTitle}” has no kept sheet without a number. Nothing was changed. Sort the pile first with `edreg sort`.");

    public static RefusedException CountsDiffer(int sheets, int numbers) =>
        new("counts-differ", $"{Count(sheets, "sheet")} and {Count(numbers, "number")} were chosen. Nothing was changed. Name as many numbers as sheets, in the same order.");

    public static RefusedException Closed(Work work) =>
        new("edition-closed-already", $"The edition of “{work.ShownTitle}” is closed, so its numbers stay as they are. Nothing was changed. `edreg map` shows them.");

    public static RefusedException SignedOrLeft(Impression sheet, Work work) =>
        new("number-stays", $"{work.NumberOf(sheet)} of “{work.ShownTitle}” ({sheet.ShownCode}) is signed, certified or has left the studio, so its number stays. Nothing was changed. If the record was mistyped, record what the pencil says with `edreg inscribe` and let `edreg check` hold the two together.");

    public static RefusedException NeverGrows(Numbering numbering, Work work) =>
        new("edition-never-grows", $"A sheet of “{work.ShownTitle}” is signed or has left, so {numbering.Span} never grows. Nothing was changed. Keep what is printed beyond it as spares, with `edreg sort`.");

    public static RefusedException ReductionNeverGrows(Work work, int sheets) =>
        new("reduction-never-grows", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” is a reduction print: no more than the {sheets} sheets at hand can ever be numbered. Nothing was changed. Choose a size up to {sheets}."));

    public static RefusedException ShrinkOverGiven(string spelled, Work work) =>
        new("number-in-use", $"{spelled} of “{work.ShownTitle}” is given, so the numbering cannot end before it. Nothing was changed. Take the number back first with `edreg number --take-back`.");

    public static RefusedException NoteNeeded() =>
        new("note-missing", "A void number needs its story. Nothing was changed. Say what happened with --note.");

    public static RefusedException GivenHasNoFate(string spelled, Impression sheet) =>
        new("number-is-given", $"{spelled} is on {sheet.ShownCode}, and a number that is given needs no other fate. Nothing was changed. Take it back first if the sheet does not bear it.");

    public static RefusedException CannotClose(Work work, IReadOnlyList<string> reasons) =>
        new("edition-not-accounted-for", $"The edition of “{work.ShownTitle}” cannot be closed yet: {string.Join("; ", reasons)}. Nothing was changed. Give each number to a sheet, say its fate with `edreg fate` or end a short edition with `edreg short`, state the matrix's fate with `edreg matrix fate`, and close again.");

    public static RefusedException NotAllKnown(Work work, IReadOnlyList<string> reasons) =>
        new("edition-not-all-known", $"The edition of “{work.ShownTitle}” is not whole here yet: {string.Join("; ", reasons)}. Nothing was changed. Say what became of each number with `edreg fate` (elsewhere, where it was sold before), and how many there are with `edreg mend`, then say it is whole again.");

    public static RefusedException WholeAlready(Work work) =>
        new("edition-whole-already", $"The edition of “{work.ShownTitle}” is ours and whole already. Nothing was changed. `edreg map` shows every number of it.");

    public static RefusedException NotOursToClose(Work work) =>
        new("edition-not-ours-whole", $"The edition of “{work.ShownTitle}” is someone else's or only partly known here, so it cannot be closed by us. Nothing was changed. Only an edition of ours that is whole is closed.");

    private static string Count(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
