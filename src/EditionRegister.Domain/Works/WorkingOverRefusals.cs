using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Works;

/// <summary>Why a sheet cannot have been worked over into a work of its own.</summary>
public static class WorkingOverRefusals
{
    public static RefusedException NotLeftOut(Work old, Impression sheet) =>
        new("worked-over-not-left-out", $"{sheet.ShownCode} of “{old.ShownTitle}” is {(sheet.Number is not null ? $"numbered {old.NumberOf(sheet)}" : sheet.Standing.Replace('-', ' '))}, and only a sheet left out is worked over into a work of its own. Nothing was changed. Leave it out first with `edreg sort left-out`, or name another sheet.");

    public static RefusedException NotTheMakers(Work old, Impression sheet) =>
        new("worked-over-not-the-makers", $"{sheet.ShownCode} of “{old.ShownTitle}” belongs to {WhereInWords.OwnerOf(old, sheet)}, so it is not the maker's to work over. Nothing was changed. Look whether it is another sheet.");

    public static RefusedException NotHere(Work old, Impression sheet) =>
        new("worked-over-not-here", $"{sheet.ShownCode} of “{old.ShownTitle}” is not at hand: it is {WhereInWords.Of(old, sheet)}. Nothing was changed. Record first that it came back, or look whether it is another sheet.");

    public static RefusedException Already(Impression sheet, WorkedInto into) =>
        new("worked-over-already", $"{sheet.ShownCode} was worked over into “{into.Title}” already. Nothing was changed. `edreg work show` shows that work.");
}
