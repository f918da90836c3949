using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>Picks a show, with all that is on its list.</summary>
internal static class ShowPick
{
    private static readonly ListColumn[] Columns = [new("show", 24, Stretch: 1), new("when", 24), new("sheets", 6, IsRight: true)];

    public static PickPage<Show> Page(Desk desk, Func<Picked, Task<Saved>> then) => new(
        "Pick a show",
        "Every exhibition, sale and fair of the register. Enter takes all sheets on its list, in list order.",
        "No show is recorded yet. Room 6 makes one.",
        Columns,
        show => [show.ShownName, ShowsShown.When(show) ?? "", Counted.Figure(show.Listed.Count())],
        () => desk.Store.Do(register => register.LookAround.Shows()),
        [new("Enter", "take its list", show => WhichSheets.TakeAndGoBackAsync(desk, new Picked(new ChosenSheets(new ImpressionChoice { Show = show.Id }, $"the list of “{show.ShownName}”"), IsWhole: true), then))]);
}
