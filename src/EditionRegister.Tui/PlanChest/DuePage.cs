using EditionRegister.Domain.Chains;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What is to be back, collected, answered for or let go: over already, or within some days.</summary>
internal sealed class DuePage(Desk desk) : ListPage
{
    private const int Longest = 3_650;

    private static readonly ListColumn[] Columns = [new("until", 10), new("is it", 7), new("what", 13), new("with or for", 14, Stretch: 1), new("number", 8), new("title", 13, Stretch: 2)];

    private DueListed? _due;
    private int _days = ListDue.UsualDays;

    public override string Title => "What is due";

    public override string Explains =>
        "Every sheet that was to be back by now, or is to be back soon: consigned, lent, on approval, away for a time, awaiting collection, and every reservation with a last day. "
        + "“Over” means the day has passed. Enter opens the sheet, where it is taken back with r, let go with a, or its day moved on from its history. With + you look twice as far ahead.";

    public override Listing Rows => Listing.Of(Columns, _due?.Sheets ?? [], due => [due.Until.ToString(), due.HasPassed ? "! over" : "to come", due.What, DueShown.PersonOf(due) ?? "", due.Work.NumberOf(due.Sheet), due.Work.ShownTitle]);

    public override string Empty => _due is null ? "Looking…" : DueShown.InShort(_due);

    public override IReadOnlyList<Line> Head(int width) => _due is { Sheets.Count: > 0 } due ? [Line.Of(DueShown.InShort(due), due.Sheets.Any(one => one.HasPassed) ? Tone.Warning : Tone.Quiet)] : [];

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Here is { } here ? [KeyDeed.Opens("Enter", "open the sheet", () => new ImpressionPage(desk, here.Sheet.ShownCode))] : (KeyDeed[])[],
        .. _days < Longest ? [new KeyDeed("+", "look further", FurtherAsync) { Explained = "Looks twice as many days ahead." }] : (KeyDeed[])[],
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    private DueSheet? Here => _due is { Sheets.Count: > 0 } due ? due.Sheets[Current] : null;

    public override async Task RefreshAsync()
    {
        var (on, days) = (desk.Today, _days);
        _due = await desk.Store.Do(register => register.ListDue.Run(on, days));
    }

    private async Task<Opening?> FurtherAsync()
    {
        _days = Math.Min(Longest, _days * 2);
        await RefreshAsync();

        return null;
    }
}
