using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sets;

/// <summary>A set of prints copy by copy: which sheet of each part lies in it; sheets are gathered into the copies by one key.</summary>
internal sealed class SetPage(Desk desk, long work) : ListPage
{
    private static readonly ListColumn[] Columns = [new("copy", 10), new("code", 9), new("what lies in it", 24, Stretch: 2), new("where", 18, Stretch: 1)];

    private readonly HashSet<long> _marked = [];
    private SetSeen? _seen;
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => _seen is { } seen ? $"The set {Called.Work(seen.Work)}" : "A set of prints";

    public override string Explains =>
        "A portfolio, suite, book or print exchange: every line is one copy, and its own sheet, such as the colophon, bears the number of the set. g puts into the copy the sheet of each part that has the copy's number, "
        + "and brings it to where the copy is; Space marks several copies, and a gathers all. h puts in a sheet by its code where the numbers differ. A copy that is moved or sold takes with it what lies in it. "
        + "Enter opens the copy, where it is moved, sold and certified like any sheet.";

    public override Listing Rows => _rows;

    public override string Empty => "The set has no copies yet. Print its colophons as a run of this work, keep, declare and number them: each is one copy.";

    public override IReadOnlyList<KeyDeed> Keys => _seen is not { } seen ? [] :
    [
        .. Here is { } here ? OfCopies(seen, here) : [],
        new("n", "add a part", () => SetForms.AddPartAsync(desk, seen)) { Explained = "Names a work as the next part of the set." },
        KeyDeed.Opens("e", "edit the set", () => SetForms.Edit(desk, seen)) with { Explained = "Puts right what holds the set together, and where it is signed." },
        .. seen.Set.Parts.Count > 0 ? [KeyDeed.Opens("k", "take a part off", () => SetForms.RemovePart(desk, seen)) with { Explained = "Takes a work off the parts again, while none of its sheets lies in a copy." }] : Array.Empty<KeyDeed>(),
    ];

    private Impression? Here => _seen is { Copies.Count: > 0 } seen ? seen.Copies[Current] : null;

    public override async Task RefreshAsync()
    {
        try
        {
            _seen = await desk.Store.Do(register => register.LookAround.Set(work));
        }
        catch (RefusedException)
        {
            (_seen, _rows) = (null, new(Columns, 0, _ => []));
            throw;
        }

        var seen = _seen;
        _marked.IntersectWith(seen.Copies.Select(copy => copy.Id));
        _rows = new Listing(Columns, seen.Copies.Count, row => Cells(seen, seen.Copies[row])) { IsMarked = row => _marked.Contains(seen.Copies[row].Id) };
    }

    public override IReadOnlyList<Line> Head(int width) => _seen is not { } seen ? [] :
    [
        .. Wrap.Of($"{Capital(SetsSaid.InShort(seen))}.", width).Select(line => (Line)line),
        .. seen.Set.Parts.Count == 0
            ? [Line.Of("It has no parts yet: n adds one.", Tone.Warning)]
            : Wrap.Of($"Parts: {string.Join("; ", seen.Set.Parts.Select(part => $"{Counted.Figure(part.Ordinal)} “{part.Title}”"))}.", width).Select(line => Line.Of(line, Tone.Quiet)),
        Line.Empty,
    ];

    public override IReadOnlyList<Line> Foot(int width) =>
    [
        .. _seen is { } seen && Here is { } here ? InHere(seen, here, width) : [],
        .. _marked.Count > 0 ? [Line.Of($"{Counted.Of(_marked.Count, "copy", "copies")} marked: g gathers them all.", Tone.Warning)] : Array.Empty<Line>(),
    ];

    private IEnumerable<KeyDeed> OfCopies(SetSeen seen, Impression here)
    {
        yield return KeyDeed.Opens("Enter", "open the copy", () => new ImpressionPage(desk, here.ShownCode));

        if (seen.Set.Parts.Count > 0)
        {
            yield return new KeyDeed("g", _marked.Count > 0 ? "gather marked" : "gather this copy", () => GatherAsync(seen, Meant(seen, here))) { Explained = "Puts into the copy the sheet of every part that has the copy's number. What it has already stays." };
            yield return new KeyDeed("a", "gather all", () => GatherAsync(seen, copies: null)) { Explained = "Does the same for every numbered copy." };
            yield return KeyDeed.Opens("h", "put in by code", () => ByHand(seen, here)) with { Explained = "Puts sheets into this copy by their codes, where they do not have the copy's number." };
        }

        if (here.SetSheets.Any(sheet => sheet.IsIn))
        {
            yield return KeyDeed.Opens("x", "take a sheet out", () => TakeOut(seen, here)) with { Explained = "Takes one sheet out of the copy; it stays where it is." };
        }

        yield return KeyDeed.Doing("Space", _marked.Contains(here.Id) ? "unmark" : "mark", () =>
        {
            _ = _marked.Remove(here.Id) || _marked.Add(here.Id);
            Current++;
        });
    }

    private List<Impression> Meant(SetSeen seen, Impression here) => _marked.Count > 0 ? [.. seen.Copies.Where(copy => _marked.Contains(copy.Id))] : [here];

    private async Task<Opening?> GatherAsync(SetSeen seen, List<Impression>? copies)
    {
        var before = Lying(seen);
        var (sheets, now) = await desk.Store.Do(register => (register.GatherSet.ByNumber(work, copies is null ? null : Choice(copies.Select(copy => copy.ShownCode))), register.LookAround.Set(work)));
        _marked.Clear();
        Said(before, now, sheets);
        await RefreshAsync();

        return null;
    }

    private Form ByHand(SetSeen seen, Impression here) => new($"Into copy {seen.Work.NumberOf(here)} of {Called.Work(seen.Work)}",
        [Fields.Ranges("Codes", "", "codes of the sheets, such as 7KQ4-M2X3, H4RB-22R4")],
        async form =>
        {
            var before = Lying(seen);
            var (sheets, now) = await desk.Store.Do(register => (register.GatherSet.ByHand(work, ImpressionChoice.OfCode(here.ShownCode), new ImpressionChoice { Sheets = form["Codes"] }), register.LookAround.Set(work)));

            return new Saved(SetsSaid.Gathered(now.Work, sheets)) { Undo = Undoing(before, now) };
        })
    {
        Name = "into a copy",
        OwnEachTime = ["Codes"],
    };

    private Choice TakeOut(SetSeen seen, Impression here) => new($"What is taken out of copy {seen.Work.NumberOf(here)}?",
    [
        .. here.SetSheets.Where(sheet => sheet.IsIn).Select(sheet => new Choosable(null, $"{sheet.Number}  {seen.Set.Parts.FirstOrDefault(part => part.Work == sheet.Work)?.Title} ({sheet.ShownCode})", async () =>
        {
            await desk.Store.Do(register => register.TakeOutOfSet.Run(work, ImpressionChoice.OfCode(sheet.ShownCode)));
            desk.Say(SetsSaid.TakenOut(seen.Work, 1), Tone.Good);
            desk.Undo = new Undoing("taking it out", async () => SetsSaid.Gathered(seen.Work, await desk.Store.Do(register =>
                register.GatherSet.ByHand(work, ImpressionChoice.OfCode(here.ShownCode), ImpressionChoice.OfCode(sheet.ShownCode)))));

            return null;
        })),
    ]);

    private void Said(HashSet<string> before, SetSeen now, int sheets)
    {
        desk.Say(SetsSaid.Gathered(now.Work, sheets), Tone.Good);
        desk.Undo = sheets > 0 ? Undoing(before, now) : null;
    }

    /// <summary>What was just put in comes out again; that it was brought to its copy stays, for there it is.</summary>
    private Undoing Undoing(HashSet<string> before, SetSeen now)
    {
        List<string> put = [.. Lying(now).Except(before)];

        return new Undoing("the gathering", async () => SetsSaid.TakenOut(now.Work, await desk.Store.Do(register => register.TakeOutOfSet.Run(work, Choice(put)))));
    }

    private static HashSet<string> Lying(SetSeen seen) => [.. seen.Copies.SelectMany(copy => copy.SetSheets.Where(sheet => sheet.IsIn).Select(sheet => sheet.ShownCode))];

    private static ImpressionChoice Choice(IEnumerable<string> codes) => new() { Sheets = string.Join(", ", codes) };

    private static string[] Cells(SetSeen seen, Impression copy) => [seen.Work.NumberOf(copy), copy.ShownCode, SetsSaid.Holds(seen, copy), Where(seen, copy)];

    // The innermost place first, so that a narrow column still says which folder.
    private static string Where(SetSeen seen, Impression copy) => copy.Where is { State: "placed", Place: { } place }
        ? string.Join(", ", Places.Split(seen.Work.Book.PathOf(place)).Reverse())
        : WhereInWords.Of(seen.Work, copy);

    private static IEnumerable<Line> InHere(SetSeen seen, Impression here, int width) =>
        Wrap.Of(string.Join("; ", seen.Set.Parts.Select(part => $"{part.Title} {SetSeen.In(here, part)?.Number ?? "–"}")), width).Select(line => Line.Of(line, Tone.Strong));

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
