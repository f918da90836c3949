using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Choosing several sheets of a tray: one by one, from the last one to here, or by typing their numbers.</summary>
internal sealed class Marking(Desk desk, EditionPage page)
{
    private const string Numbers = "Numbers";

    private string? _last;

    /// <summary>The marked sheets that lie in this tray, in the order in which they were marked.</summary>
    public IReadOnlyList<TraySlot> Here
    {
        get
        {
            if (desk.Marked.Count == 0)
            {
                return [];
            }

            var slots = page.Slots.Where(slot => slot.Code is not null).DistinctBy(slot => slot.Code).ToDictionary(slot => slot.Code!, StringComparer.Ordinal);

            return [.. desk.Marked.Codes.Select(slots.GetValueOrDefault).OfType<TraySlot>()];
        }
    }

    /// <summary>How many are marked, and how many of them lie elsewhere; empty where none is.</summary>
    public string Said
    {
        get
        {
            var here = Here.Count;
            var elsewhere = desk.Marked.Count - here;

            return desk.Marked.Count == 0 ? "" : $"{Counted.Figure(here)} marked here{(elsewhere > 0 ? $", {Counted.Figure(elsewhere)} elsewhere" : "")}";
        }
    }

    public IEnumerable<KeyDeed> Keys()
    {
        if (page.Here?.Code is { } code)
        {
            yield return KeyDeed.Doing("Space", desk.Marked.Holds(code) ? "unmark" : "mark", () => Turn(code)) with
            {
                Explained = "Marks the sheet for what is done next, or takes the mark away. What you do then is done to all marked sheets of this tray.",
            };
        }
    }

    public IEnumerable<KeyDeed> MoreKeys()
    {
        if (page.Here?.Code is not null && _last is not null && desk.Marked.Holds(_last))
        {
            yield return KeyDeed.Doing("h", "mark up to here", ToHere) with { Explained = "Marks every sheet from the one marked last to this one." };
        }

        if (page.Slots.Any(slot => slot is { Numbering: not null, Code: not null }))
        {
            yield return KeyDeed.Opens("k", "mark by number", ByNumber) with { Explained = "Marks sheets by their numbers, typed as people list them: 3-7, 9, A/P I-II." };
        }

        if (desk.Marked.Count > 0)
        {
            yield return KeyDeed.Doing("z", "clear marks", Clear) with { Explained = "Takes every mark away, here and elsewhere." };
        }
    }

    private void Turn(string code)
    {
        desk.Marked.Turn(code);
        _last = desk.Marked.Holds(code) ? code : null;
        page.Lay();
    }

    private void ToHere()
    {
        var from = page.Slots.First(slot => slot.Code == _last).At;
        var to = page.Here!.At;

        foreach (var code in page.Slots.Where(slot => slot.At >= Math.Min(from, to) && slot.At <= Math.Max(from, to)).Select(slot => slot.Code).OfType<string>())
        {
            desk.Marked.Mark(code);
        }

        _last = page.Here.Code;
        page.Lay();
    }

    private void Clear()
    {
        desk.Marked.Clear();
        _last = null;
        page.Lay();
    }

    private Form ByNumber() => new($"Mark sheets of {Called.Work(page.Seen!.Work)}", [NumberFateForm.Required(Fields.Ranges(Numbers))], async form =>
    {
        var chosen = await desk.Store.Do(register => register.LookAround.Chosen(new ImpressionChoice { Edition = page.Seen!.Edition.Id, Sheets = form[Numbers] }));
        var sheets = chosen.SelectMany(one => one.Sheets).ToList();
        sheets.ForEach(sheet => desk.Marked.Mark(sheet.ShownCode));
        _last = sheets[^1].ShownCode;

        return new Saved($"{Counted.Sheets(sheets.Count)} marked.");
    })
    {
        Name = "Mark sheets",
        OwnEachTime = [Numbers],
    };

}
