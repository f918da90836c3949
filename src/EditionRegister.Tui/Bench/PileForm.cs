using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked when the last pass is done and the pile is laid.</summary>
internal static class PileForm
{
    private const string Unused = "Unused";
    private const string Spoiled = "Spoiled";
    private const string Ready = "Dry from";
    private const string Place = "Where the pile lies";
    private const string PlaceIs = "That place is";

    public static Form Of(Desk desk, Work work, PrintRun run) => new($"Lay the pile of print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)}", [
        Fields.Count(Unused, run.Unused is { } unused ? Counted.Figure(unused) : ""),
        Fields.Count(Spoiled, Counted.Figure(PassBalance.AtLeast(run, pass => pass.Spoiled))),
        Fields.Date(Ready),
        Fields.Known(Place, [.. work.Book.Places.Keys.Select(id => work.Book.PathOf(id)).Order(StringComparer.Ordinal)], "Studio › Drawer 1, or empty: it is with the maker"),
        Field.OneOf(PlaceIs, [Naming.Known, Naming.New]),
    ], form => SaveAsync(desk, work, run, form))
    {
        Name = "Lay the pile",
        About = [$"{RunBalance.Of(work, run)}.", "Every sheet gets its code; the proofs held out on the way lie at the end."],
        OwnEachTime = [Unused, Spoiled, Ready],
    };

    private static async Task<Saved> SaveAsync(Desk desk, Work work, PrintRun run, Form form)
    {
        NewPile pile = new() { Unused = Fields.Whole(form[Unused]), Spoiled = Fields.Whole(form[Spoiled]), Ready = Fields.DateOf(form[Ready]) };
        var now = await desk.Store.Do(register =>
        {
            Naming.RecordNewPlace(register, form[Place], form[PlaceIs]);
            register.LayPile.Run(work.Id, run.Ordinal, pile, form[Place]);

            return register.LookAround.Work(work.Id);
        });

        return new Saved(BenchSaid.PileLaid(now, now.Runs.First(one => one.Id == run.Id)));
    }
}
