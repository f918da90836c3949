using System.Globalization;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Chains;

/// <summary>Why a step of a chain cannot be put right so.</summary>
public static class MendingRefusals
{
    public static RefusedException NoSuchStep(Impression sheet, int step, int steps) =>
        new("step-not-found", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} has no step {step} there: {(steps == 1 ? "its only step is 1" : $"its steps are 1 to {steps}")}. Nothing was changed. `edreg show {sheet.ShownCode}` numbers them."));

    public static RefusedException FirstStepsKind(Impression sheet) =>
        new("first-step-keeps-its-kind", $"The first step of {sheet.ShownCode} says how the sheet came to be known, so it keeps its kind and stays where it is. Nothing was changed. Its date, place and owner can be put right.");

    public static RefusedException KindOfOtherChain(MoveKind kind, string chain) =>
        new("step-of-the-other-chain", $"“{kind.Name}” is no step of the {chain}. Nothing was changed. Choose a kind of that chain.");

    public static RefusedException Impossible(Impression sheet, string why) =>
        new("chain-would-break", $"{sheet.ShownCode} cannot have gone so: {why}. Nothing was changed. Put the other step right first, or correct the date.");

    public static RefusedException NothingPutRight(Impression sheet) =>
        new("nothing-put-right", $"Nothing of that step of {sheet.ShownCode} would change. Nothing was changed. Say what it should be: its date, kind, place, person, terms or note.");
}
