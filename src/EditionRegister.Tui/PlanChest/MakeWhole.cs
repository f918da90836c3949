using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Asks whether an edition known in part is now wholly accounted for.</summary>
internal static class MakeWhole
{
    public static Question Asked(Desk desk, EditionSeen seen) => new($"Is {seen.CalledEdition} whole here now?", [
        new Answer("y", "yes: of every number it is known what became of it", () => DoAsync(desk, seen.Edition.Id)),
        new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null)),
    ])
    {
        Shown =
        [
            "Then it is yours and every number of it is followed here. It can be",
            "certified and closed; this is not taken back.",
        ],
    };

    private static async Task<Opening?> DoAsync(Desk desk, long edition)
    {
        desk.Say(await desk.Store.Do(register =>
        {
            register.MakeEditionWhole.Run(edition);
            var (work, whole) = register.LookAround.Edition(edition);

            return EditionSaid.Whole(work, whole);
        }), Tone.Good);

        return null;
    }
}
