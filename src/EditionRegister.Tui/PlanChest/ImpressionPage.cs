using EditionRegister.Domain;
using EditionRegister.Tui.Bench;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>One impression whole, and everything that can be done to it.</summary>
internal sealed class ImpressionPage(Desk desk, string code) : TextPage
{
    private string _code = code;
    private ImpressionWhole? _whole;

    public override string Title => _whole?.Name ?? _code;

    public override string Explains =>
        "All the register says of one printed sheet: what it is, which number it was given and what is pencilled on it, where it lies and where it was before, whose it is and was, "
        + "which documents were issued for it, and what a check finds about it. What you do here is done to this sheet only. "
        + "A step that was recorded by mistake is taken back with t; the logbook keeps both.";

    public override IReadOnlyList<KeyDeed> Keys => _whole is null ? [] : [.. SheetDeeds.Keys(desk, Chosen), .. ToOthers(_whole)];

    public override IReadOnlyList<Line> Head(int width) => _whole is null ? [] : ImpressionText.Head(_whole, width);

    public override IReadOnlyList<Line> Text(int width) =>
        _whole is null ? [Line.Of($"{_code} is not in this register.", Tone.Quiet)] : ImpressionText.Of(_whole, width);

    public override async Task RefreshAsync()
    {
        try
        {
            _whole = await desk.Store.Do(register => ImpressionWhole.Read(register, _code));
        }
        catch (RefusedException)
        {
            _whole = null;
            throw;
        }
    }

    private ChosenSheets? Chosen() => _whole is { } whole ? new ChosenSheets(ImpressionChoice.OfCode(_code), whole.Name) : null;

    private IEnumerable<KeyDeed> ToOthers(ImpressionWhole whole)
    {
        var (work, sheet) = (whole.Seen.Work, whole.Seen.Impression);
        var (before, after) = ImpressionNeighbours.Of(work, sheet);

        yield return KeyDeed.Opens("b", "see its work", () => new GoTo(RoomName.Bench, new WorkPage(desk, work.Id))) with { Explained = "Goes to the Bench, to the work this sheet is of: its blocks, print runs and editions." };
        yield return KeyDeed.Opens("h", "see its history", () => new ImpressionHistoryPage(desk, work, sheet)) with { Explained = "Lists every entry of the logbook about the work, newest first; each opens whole. A step of where it was or whose it was is put right from there." };

        if (before is not null)
        {
            yield return Beside("Left", "the one before", before);
        }

        if (after is not null)
        {
            yield return Beside("Right", "the next one", after);
        }
    }

    private KeyDeed Beside(string key, string does, string code) => new(key, does, async () =>
    {
        _code = code;
        await RefreshAsync();

        return null;
    })
    {
        Explained = key == "Left" ? "Turns to the sheet with the number before in this edition." : "Turns to the sheet with the next number of this edition.",
    };
}
