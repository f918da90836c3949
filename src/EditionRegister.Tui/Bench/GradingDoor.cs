using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>The keys that lead from a pile to its grading, and to the proposal worked out from it.</summary>
internal static class GradingDoor
{
    /// <param name="desk">The desk.</param>
    /// <param name="work">The work.</param>
    /// <param name="run">The print run by its place among those of the work.</param>
    /// <param name="pile">Its sheets.</param>
    /// <param name="here">The sheet to begin with; null is the first that is not graded.</param>
    public static IEnumerable<KeyDeed> Keys(Desk desk, long work, int run, IReadOnlyList<Impression> pile, Impression? here)
    {
        if (pile.Any(sheet => sheet.Standing != "left-out"))
        {
            yield return KeyDeed.Opens("g", "grade them", () => new GradingPage(desk, work, run, here is { Standing: not "left-out" } ? here.Id : null)) with
            {
                Explained = "Grades the sheets one by one beside the guide sheet: registration, inking, edges, cleanness and likeness, each by one key.",
            };
        }

        if (pile.Any(sheet => sheet.Grade is not null))
        {
            yield return KeyDeed.Opens("p", "propose the kept", () => ProposalPage.Ask(desk, work, run, keep: null)) with
            {
                Explained = "Works out from the grades which sheets are cleanest and most alike, and shows them; nothing is sorted before you say so.",
            };
        }
    }
}
