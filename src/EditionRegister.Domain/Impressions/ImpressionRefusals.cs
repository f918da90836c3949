using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Why a sheet cannot be found, sorted or inscribed so.</summary>
public static class ImpressionRefusals
{
    public static RefusedException NoSuchCode(string code) =>
        new("code-not-found", $"No impression in this register has the code {code}. Nothing was changed. Look at the code again; `edreg list` shows all codes.");

    public static RefusedException NotACode(string text) =>
        new("code-misread", $"“{text}” is no register code: a code has the form 7KQ4-M2X3, and its last character answers for the others. Nothing was changed. Look at the label again.");

    public static RefusedException NothingChosen() =>
        new("nothing-chosen", "No impressions were chosen. Nothing was changed. Name codes or numbers, as in “3-7, 9, A/P I-III, 7KQ4-M2X3”; for numbers say which edition with --edition; --lying-in takes everything in a place, --show everything listed for a show, --all everything.");

    public static RefusedException NumbersNeedEdition(string part) =>
        new("numbers-need-edition", $"“{part}” names sheets by number, and numbers belong to an edition. Nothing was changed. Say which edition with --edition, or name the sheet by its code.");

    public static RefusedException NobodyHasNumber(string part, string edition) =>
        new("number-not-given", $"No sheet of {edition} has the number {part}. Nothing was changed. `edreg map` shows which numbers are given.");

    public static RefusedException NotInPile(string part, string run) =>
        new("not-in-pile", $"The pile of {run} has no sheet {part}. Nothing was changed. `edreg work show` shows how many sheets the pile has.");

    public static RefusedException Twice(string code) =>
        new("chosen-twice", $"{code} was chosen twice. Nothing was changed. Name every sheet once.");

    public static RefusedException Numbered(Work work, Impression sheet) =>
        new("sheet-is-numbered", $"{sheet.ShownCode} bears the number {work.NumberOf(sheet)} of “{work.ShownTitle}”, so it stays a kept sheet. Nothing was changed. Take its number back first with `edreg number --take-back`, while it is unsigned and here.");

    public static RefusedException NoFault() =>
        new("fault-missing", $"A sheet is left out for a reason. Nothing was changed. Name the fault: {FaultWords()}.");

    public static RefusedException UnknownFault(string fault, OwnWords own) =>
        new("fault-unknown", $"“{fault}” is no fault this register knows. Nothing was changed. The faults are {FaultWords()}{string.Concat(own.Faults.Select(one => ", " + one.Word))}; with “other”, say more in the note.");

    public static RefusedException NothingToInscribe() =>
        new("inscription-empty", "Nothing was said about what stands on the sheet. Nothing was changed. Give --as-spelled, or what you read: --pencilled, --titled, --signature, --signed, --inscription.");

    public static RefusedException OneSheetOnly(string what) =>
        new("one-sheet-only", $"{what} differs from sheet to sheet, so it is recorded for one sheet at a time. Nothing was changed. Choose one sheet, or use --as-spelled for several.");

    public static RefusedException OneAtATime(string what) =>
        new("one-sheet-only", $"{what} is recorded for one sheet at a time. Nothing was changed. Choose one sheet.");

    public static RefusedException NotNumberedYet(Impression sheet) =>
        new("sheet-not-numbered", $"{sheet.ShownCode} has no number yet, so there is nothing to spell. Nothing was changed. Give it a number first with `edreg number`, or record what you read with --pencilled.");

    public static RefusedException ChangedMeanwhile(Impression sheet, string fact, string now, string wanted) =>
        new("changed-meanwhile", $"{sheet.ShownCode} was changed while you were looking at it: {fact} is now {now}, you wanted {wanted}. Nothing was changed. Look at it as it stands and do this again.");

    private static string FaultWords() => string.Join(", ", Fault.All.Select(fault => fault.Word));
}
