using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Shows;

/// <summary>Listing sheets for a show and taking them off its list; each undoes the other.</summary>
internal static class ShowLists
{
    /// <summary>Of an edition, a place or a list taken whole, what is listed already or left out is passed over.</summary>
    public static async Task<Saved> AddAsync(Desk desk, long show, Picked picked)
    {
        var (codes, passed) = await desk.Store.Do(register => Fitting(register, show, picked));

        if (codes.Count == 0)
        {
            return new Saved(passed == 0
                ? "Nothing was listed: no sheet is among these."
                : $"Nothing was listed: of {Counted.Sheets(passed)} every one is listed already or left out.");
        }

        var sentence = await desk.Store.Do(register => Add(register, show, codes));

        return new Saved(passed == 0 ? sentence : $"{sentence} {Counted.Figure(passed)} passed over: listed already or left out.")
        {
            Undo = new Undoing("the listing", () => desk.Store.Do(register => Remove(register, show, codes))),
        };
    }

    public static async Task<Saved> RemoveAsync(Desk desk, long show, IReadOnlyList<string> codes) => new(await desk.Store.Do(register => Remove(register, show, codes)))
    {
        Undo = new Undoing("taking off", () => desk.Store.Do(register => Add(register, show, codes))),
    };

    public static ImpressionChoice Choice(IEnumerable<string> codes) => new() { Sheets = string.Join(", ", codes) };

    private static (IReadOnlyList<string> Codes, int Passed) Fitting(Register register, long show, Picked picked)
    {
        var chosen = SheetsAmong.Of(register, picked.Chosen.Choice);
        var listed = register.LookAround.Show(show).Show.Listed.Select(listing => listing.Impression).ToHashSet();
        var fitting = picked.IsWhole ? [.. chosen.Where(sheet => sheet.Standing != "left-out" && !listed.Contains(sheet.Id))] : chosen;

        return ([.. fitting.Select(sheet => sheet.ShownCode)], chosen.Count - fitting.Count);
    }

    private static string Add(Register register, long show, IReadOnlyList<string> codes)
    {
        var sheets = register.AddToShow.Run(show, Choice(codes));
        var seen = register.LookAround.Show(show);

        return ShowsShown.Listed(sheets, seen.Show.ShownName, seen.Listed.Count);
    }

    private static string Remove(Register register, long show, IReadOnlyList<string> codes)
    {
        var sheets = register.RemoveFromShow.Run(show, Choice(codes));
        var seen = register.LookAround.Show(show);

        return ShowsShown.TakenOff(sheets, seen.Show.ShownName, seen.Listed.Count);
    }
}
