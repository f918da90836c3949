using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Why a sheet cannot be a ghost so.</summary>
public static class GhostRefusals
{
    public static RefusedException OfItself(Impression sheet) =>
        new("ghost-of-itself", $"{sheet.ShownCode} cannot be the ghost of itself. Nothing was changed. Name the sheet that was pulled before it with --of.");

    public static RefusedException OfAnotherWork(Impression ghost, Work work, Impression print) =>
        new("ghost-of-another-work", $"{ghost.ShownCode} is a sheet of “{work.ShownTitle}” and {print.ShownCode} is not: a ghost is pulled from the plate of its print, so both are sheets of one work. Nothing was changed. Look whether it is another sheet.");

    public static RefusedException Already(Impression ghost, Impression print) =>
        new("ghost-already", $"{ghost.ShownCode} is recorded as the ghost of {print.ShownCode} already. Nothing was changed. Take that back first with `edreg ghost {ghost.ShownCode} --take-back`.");

    public static RefusedException OfItsGhost(Impression ghost, Impression print) =>
        new("ghost-of-its-ghost", $"{print.ShownCode} was pulled after {ghost.ShownCode}, as its ghost, so it was not there before it. Nothing was changed. Name them the other way round, or take the first record back with --take-back.");

    public static RefusedException OfNothing(Impression sheet) =>
        new("ghost-of-nothing", $"{sheet.ShownCode} is no ghost of another sheet. Nothing was changed. `edreg show {sheet.ShownCode}` shows what it is.");
}
