using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Documents;

/// <summary>Picks a place, with all that lies in it and in the places inside it.</summary>
internal static class PlacePick
{
    private static readonly ListColumn[] Columns = [new("place", 30, Stretch: 1), new("sheets", 6, IsRight: true)];

    public static PickPage<PlaceListed> Page(Desk desk, Func<Picked, Task<Saved>> then) => new(
        "Pick a place",
        "Every place of the register. Enter takes all sheets that lie in it, or in a place inside it; how many that are stands behind it.",
        "No place is recorded yet.",
        Columns,
        place => [place.Path, Counted.Figure(place.Within)],
        () => desk.Store.Do(register => register.LookAround.Places(null)),
        [new("Enter", "take all in it", place => WhichSheets.TakeAndGoBackAsync(desk, new Picked(new ChosenSheets(new ImpressionChoice { LyingIn = place.Path }, $"all in {place.Path}"), IsWhole: true), then))]);
}
