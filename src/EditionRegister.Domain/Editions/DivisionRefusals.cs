using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>Why an edition cannot be divided so.</summary>
public static class DivisionRefusals
{
    public static RefusedException Overlaps(Work work, NumberChosen number, string person) =>
        new("entitlement-overlaps", $"{number.Spelled} of “{work.ShownTitle}” is to go to {person} already. Nothing was changed. Take that back first with `edreg divide … --take-back`, or name other numbers.");

    public static RefusedException NotAgreed(Work work, NumberChosen number) =>
        new("entitlement-not-found", $"Nobody was said to have {number.Spelled} of “{work.ShownTitle}”. Nothing was changed. `edreg map` shows how the edition is divided.");

    public static RefusedException InPart(Work work, Numbering numbering, Entitlement one, string person) =>
        new("entitlement-in-part", $"{InWords.Numbers(numbering, Enumerable.Range(one.First, one.Last - one.First + 1))} of “{work.ShownTitle}” were agreed for {person} together. Nothing was changed. Take all of them back, and divide them anew.");
}
