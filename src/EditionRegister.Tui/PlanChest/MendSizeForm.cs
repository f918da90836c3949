using EditionRegister.Domain;
using EditionRegister.Domain.Editions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Asks for a size as it should have been declared.</summary>
internal static class MendSizeForm
{
    private const string As = "As it should be";

    public static Form Of(Desk desk, EditionSeen seen) => new($"Mend the size of {seen.CalledEdition}", [
        new Field(As, seen.Edition.Numberings.Count == 1 ? Plan(seen.Edition.Numberings[0]) ?? "" : "")
        {
            IsNeeded = true,
            Form = $"one numbering: {NumberingPlan.Form}",
            Wrong = Wrong,
            Known = typed => Fields.Matching([.. seen.Edition.Numberings.Select(Plan).OfType<string>()], typed),
        },
    ], form => SaveAsync(desk, seen, form))
    {
        Name = "Mend the size",
        OwnEachTime = [As],
        About = [$"It is now {Called.Spans(seen.Edition)}."],
        Caution = "Only a slip of the pen is mended. Once a sheet is signed or has left, an edition never grows.",
    };

    /// <summary>The numbering as it is typed, or null where it has no size or cannot be read.</summary>
    public static string? Plan(Numbering numbering) => numbering is { Kind: { } kind, Notation: { } notation, Size: { } size }
        ? (new NumberingPlan(kind, notation, size, numbering.SizeState) { Name = numbering.Name }).ToString()
        : null;

    private static async Task<Saved> SaveAsync(Desk desk, EditionSeen seen, Form form)
    {
        var own = seen.Work.OwnWords;
        var plan = NumberingPlan.Read(form[As]!, own);
        var before = seen.Edition.Numberings.FirstOrDefault(one => one.Kind == plan.Kind && one.Notation == plan.Notation && one.Name == plan.Name) is { } numbering ? Plan(numbering) : null;

        return new Saved(await MendAsync(desk, seen.Edition.Id, plan))
        {
            Undo = before is null ? null : new Undoing("the mended size", () => MendAsync(desk, seen.Edition.Id, NumberingPlan.Read(before, own))),
        };
    }

    private static Task<string> MendAsync(Desk desk, long edition, NumberingPlan plan) => desk.Store.Do(register =>
    {
        register.MendSize.Run(edition, plan);
        var (work, mended) = register.LookAround.Edition(edition);

        return EditionSaid.Spans("mended", work, mended);
    });

    private static string? Wrong(string typed)
    {
        try
        {
            NumberingPlan.Plausible(typed);
            return null;
        }
        catch (RefusedException refusal)
        {
            return refusal.Message;
        }
    }
}
