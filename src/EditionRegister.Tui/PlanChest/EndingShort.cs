using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Says what ending an edition short means before it is done.</summary>
internal static class EndingShort
{
    private const string Why = "Why no more were printed";
    private const int MostNamed = 6;

    public static Form Asked(Desk desk, EditionSeen seen) => new($"End {seen.CalledEdition} as a short edition", [
        new Field(Why) { Form = "the block split; the paper ran out" },
    ], form => SaveAsync(desk, seen, form))
    {
        Name = "Short edition",
        OwnEachTime = [Why],
        About =
        [
            "The open numbers of the edition itself will not be printed. While nothing is signed, certified or away",
            "the size is set anew to what was printed, and what is pencilled must be pencilled anew. Afterwards the",
            "numbers stay: they are said to be never printed, on the map and on every certificate.",
        ],
        Caution = "Proofs stay as they are. This is not undone with one key.",
    };

    private static async Task<Saved> SaveAsync(Desk desk, EditionSeen seen, Form form)
    {
        var (sentence, anew) = await desk.Store.Do(register =>
        {
            var fell = register.EndShort.Run(seen.Edition.Id, form[Why]);
            var (work, edition) = register.LookAround.Edition(seen.Edition.Id);

            return (EditionSaid.Short(work, edition, fell), fell.ToPencilAnew.Select(sheet => sheet.ShownCode).ToList());
        });

        return new Saved(anew.Count is > 0 and <= MostNamed ? $"{sentence} They are {string.Join(", ", anew)}." : sentence);
    }
}
