using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Works;

namespace EditionRegister.Tui.Bench;

/// <summary>The print runs whose sheets lie on the rack, and from when they are dry.</summary>
internal sealed class RackPage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns = [new("title", 20, Stretch: 1), new("run", 3, IsRight: true), new("sheets", 6, IsRight: true), new("ready", 34)];

    private IReadOnlyList<OnRack> _rack = [];
    private Listing _rows = Listing.Of<OnRack>(Columns, [], _ => []);

    public override string Title => "The rack";

    public override string Explains =>
        "What lies on the drying rack: every print run with pulls that are not sorted yet, and the day from which they are dry, as it was said of the run. "
        + "What is dry longest stands first. Enter opens the print run, o sorts its pulls.";

    public override Listing Rows => _rows;

    public override string Empty => "Nothing lies on the rack: every pull is sorted.";

    public override IReadOnlyList<KeyDeed> Keys => Here is { } here
        ?
        [
            KeyDeed.Opens("Enter", "open the print run", () => new RunPage(desk, here.Work.Id, here.Run.Ordinal)),
            KeyDeed.Opens("o", "sort the pulls", () => OnTheRack.Sorting(desk, here.Work, here.Run)),
        ]
        : [];

    private OnRack? Here => _rack.Count > 0 ? _rack[Current] : null;

    public override async Task RefreshAsync()
    {
        _rack = await desk.Store.Do(register => register.ListRack.Run());
        _rows = Listing.Of(Columns, _rack, one => [one.Work.ShownTitle, Counted.Figure(one.Run.Ordinal), Counted.Figure(one.Sheets), RackText.When(one.Run.Ready, desk.Today)]);
    }
}
