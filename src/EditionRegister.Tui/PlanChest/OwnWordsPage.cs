using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Every kind of numbering and every fault, those of the register's own among them.</summary>
internal sealed class OwnWordsPage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns = [new("what", 5), new("word", 16, Stretch: 1), new("mark", 18), new("size", 4), new("all", 3), new("sale", 4), new("own", 3)];

    private IReadOnlyList<(NumberingKind? Kind, Fault? Fault, bool IsOwn)> _all = [];
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => "Own words";

    public override string Explains =>
        "The kinds of numbering and the faults that every register knows, and those you made for yourself, which are marked own. "
        + "For a kind it says whether it counts in the edition size, in the total of all impressions, and whether it is for sale by custom. "
        + "n makes a kind, f a fault. What counts in what is settled once a numbering is of that kind: it would change a size that is declared.";

    public override Listing Rows => _rows;

    public override string Empty => "Nothing was read yet.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("n", "make a kind", () => OwnWordForms.NewKind(desk)) with { Explained = "Makes a kind of numbering of your own, with its mark." },
        KeyDeed.Opens("f", "add a fault", () => OwnWordForms.NewFault(desk)) with { Explained = "Adds a fault for which sheets are left out." },
        .. _all.Count > 0 && _all[Current] is { IsOwn: true, Kind: { } kind } ? [KeyDeed.Opens("e", "change the kind", () => OwnWordForms.EditKind(desk, kind))] : (KeyDeed[])[],
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override async Task RefreshAsync()
    {
        var own = await desk.Store.Do(register => register.LookAround.OwnWords());
        _all =
        [
            .. own.AllKinds.Select(kind => ((NumberingKind?)kind, (Fault?)null, kind.IsOwn)),
            .. own.AllFaults.Select(fault => ((NumberingKind?)null, (Fault?)fault, own.Faults.Contains(fault))),
        ];
        _rows = Listing.Of(Columns, _all, Cells);
    }

    private static string[] Cells((NumberingKind? Kind, Fault? Fault, bool IsOwn) row) => row.Kind is { } kind
        ? ["kind", kind.Word, kind.Mark, Sign(kind.InSize), Sign(kind.InTotal), Sign(kind.ForSale), Sign(row.IsOwn)]
        : ["fault", row.Fault!.Word, "", "", "", "", Sign(row.IsOwn)];

    private static string Sign(bool yes) => yes ? "yes" : "";
}
