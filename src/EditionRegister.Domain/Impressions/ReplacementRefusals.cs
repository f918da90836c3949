using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Why a spare cannot take the number of another sheet.</summary>
public static class ReplacementRefusals
{
    public static RefusedException NoNumber(Impression old) =>
        new("replaced-has-no-number", $"{old.ShownCode} has no number that another sheet could take. Nothing was changed. Number the spare itself with `edreg number`.");

    public static RefusedException NotOurs(Work work) =>
        new("replacement-not-ours-whole", $"The edition of “{work.ShownTitle}” is someone else's or only partly known here, and only who has all of it can replace a sheet. Nothing was changed. Ask its maker or publisher.");

    public static RefusedException OldIsAway(Work work, Impression old) =>
        new("replaced-is-away", $"{old.ShownCode} is {WhereInWords.Of(work, old)} and belongs to {WhereInWords.OwnerOf(work, old)}: while it may come up again with its number, no other sheet gets it. Nothing was changed. Record its return or its destruction first.");

    public static RefusedException FaultMissing(Impression old) =>
        new("replacement-fault-missing", $"{old.ShownCode} is still there, so what is wrong with it must be said. Nothing was changed. Name the fault with --fault, as in --fault crease; or record its destruction first.");

    public static RefusedException SpareNumbered(Work work, Impression spare) =>
        new("spare-is-numbered", $"{spare.ShownCode} has the number {work.NumberOf(spare)} already, and a sheet has one. Nothing was changed. Choose a spare without a number.");

    public static RefusedException NoSpare(Impression spare) =>
        new("spare-is-none", $"{spare.ShownCode} is {spare.Standing.Replace('-', ' ')}, and only a spare or a kept sheet without a number takes the place of another. Nothing was changed. Choose another, or sort it first with `edreg sort`.");

    public static RefusedException SpareSigned(Impression spare) =>
        new("spare-is-signed", $"{spare.ShownCode} is signed already, so it has stood for something else. Nothing was changed. Choose an unsigned spare.");

    public static RefusedException SpareIsAway(Work work, Impression spare) =>
        new("spare-is-away", $"{spare.ShownCode} is {WhereInWords.Of(work, spare)} and belongs to {WhereInWords.OwnerOf(work, spare)}, so it is not at hand. Nothing was changed. Choose a spare that is here.");

    public static RefusedException OfAnotherWork(Work work, Impression old, Impression spare) =>
        new("replacement-of-another-work", $"{old.ShownCode} is a sheet of “{work.ShownTitle}” and {spare.ShownCode} is not. Nothing was changed. Look whether it is another sheet.");
}
