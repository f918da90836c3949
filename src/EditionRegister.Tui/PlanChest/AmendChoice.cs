using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Which step of a sheet's chains is put right, and what is done about it.</summary>
internal static class AmendChoice
{
    public static async Task<Opening?> OfAsync(Desk desk, string code)
    {
        var seen = await desk.Store.Do(register => register.LookAround.Impression(code));

        return new Choice(
            $"Which step of {code}?",
            [
                .. seen.Impression.Whereabouts.Select(link => Choosable.Opens(null, $"where {Counted.Figure(link.Ordinal)}: {Name(link.Kind)}, {WhereInWords.Of(seen.Work, link.To)}, {link.Moved}", () => What(desk, seen, link))),
                .. seen.Impression.Ownership.Select(link => Choosable.Opens(null, $"whose {Counted.Figure(link.Ordinal)}: {Name(link.Kind)}, {WhereInWords.OwnerOf(seen.Work, link.To)}, {link.Passed}", () => What(desk, seen, link))),
            ]);
    }

    private static Choice What(Desk desk, ImpressionSeen seen, WhereaboutsLink link) => new(
        $"Step {Counted.Figure(link.Ordinal)}, {Name(link.Kind)}",
        [
            new Choosable("p", "put it right", () => AmendMoveForm.OfAsync(desk, seen, link, Amending.PutRight)),
            new Choosable("a", "put one after it, learned of late", () => AmendMoveForm.OfAsync(desk, seen, link, Amending.PutAfter)),
            .. link.Ordinal == 1 ? [] : (Choosable[])[Choosable.Opens("o", "take it out: it never was", () => TakeOut(desk, seen, link.Ordinal, "whereabouts", register => register.AmendChain.Move(seen.Impression.ShownCode, new AmendedStep(link.Ordinal, Amending.TakeOut), null, new MoveCorrection(), link.V)))],
        ]);

    private static Choice What(Desk desk, ImpressionSeen seen, OwnershipLink link) => new(
        $"Step {Counted.Figure(link.Ordinal)}, {Name(link.Kind)}",
        [
            new Choosable("p", "put it right", () => AmendTransferForm.OfAsync(desk, seen, link, Amending.PutRight)),
            new Choosable("a", "put one after it, learned of late", () => AmendTransferForm.OfAsync(desk, seen, link, Amending.PutAfter)),
            .. link.Ordinal == 1 ? [] : (Choosable[])[Choosable.Opens("o", "take it out: it never was", () => TakeOut(desk, seen, link.Ordinal, "ownership", register => register.AmendChain.Transfer(seen.Impression.ShownCode, new AmendedStep(link.Ordinal, Amending.TakeOut), new AmendedPeople(), new TransferCorrection(), link.V)))],
        ]);

    private static Question TakeOut(Desk desk, ImpressionSeen seen, int step, string chain, Func<UseCases.Register, bool> takeOut) => Question.YesNo(
        $"Take step {Counted.Figure(step)} out of the {chain} of {seen.Impression.ShownCode}? What comes after goes on from the step before it.", "take it out", async () =>
        {
            await desk.Store.Do(takeOut);
            desk.Say(MovesSaid.Amended(seen.Impression.ShownCode, step, Amending.TakeOut, chain), Tone.Good);

            return null;
        });

    private static string Name(string kind) => MoveKind.Of(kind)?.Name ?? kind;
}
