using EditionRegister.Domain.Works;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Bench;

/// <summary>The way to the sorting of a run's pulls: it says where they are surely not dry yet, and hinders nobody.</summary>
internal static class OnTheRack
{
    public static SortingPage Sorting(Desk desk, Work work, PrintRun run)
    {
        if (RackText.TooEarly([new ChosenOfWork(work, [.. work.Impressions.Where(sheet => sheet.Run == run.Id && sheet.Standing == "pulled")])], desk.Today) is { } note)
        {
            desk.Say(note, Tone.Warning);
        }

        return new SortingPage(desk, work.Id, run.Ordinal);
    }
}
