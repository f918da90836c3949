using EditionRegister.Domain.Numbers;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Every kind of numbering, every fault and every technique, those of the register's own among them.</summary>
internal sealed class OwnWordsPage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns = [new("what", 9), new("word", 16, Stretch: 1), new("mark", 18), new("size", 4), new("all", 3), new("sale", 4), new("own", 3)];

    private IReadOnlyList<OwnWordRow> _all = [];
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => "Own words";

    public override string Explains =>
        "The kinds of numbering, the faults and the techniques that every register knows, and those you made for yourself, which are marked own. "
        + "For a kind it says whether it counts in the edition size, in the total of all impressions, and whether it is for sale by custom. "
        + "n makes a kind, f a fault, t a technique, which is read in words from then on. What counts in what is settled once a numbering is of that kind: it would change a size that is declared.";

    public override Listing Rows => _rows;

    public override string Empty => "Nothing was read yet.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("n", "make a kind", () => OwnWordForms.NewKind(desk)) with { Explained = "Makes a kind of numbering of your own, with its mark." },
        KeyDeed.Opens("f", "add a fault", () => OwnWordForms.NewFault(desk)) with { Explained = "Adds a fault for which sheets are left out." },
        KeyDeed.Opens("t", "add a technique", () => OwnWordForms.NewTechnique(desk)) with { Explained = "Adds a technique that is read in the words for how a work is printed." },
        .. _all.Count > 0 && _all[Current] is { IsOwn: true, Kind: { } kind } ? [KeyDeed.Opens("e", "change the kind", () => OwnWordForms.EditKind(desk, kind))] : (KeyDeed[])[],
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override async Task RefreshAsync()
    {
        var own = await desk.Store.Do(register => register.LookAround.OwnWords());
        _all =
        [
            .. own.AllKinds.Select(kind => new OwnWordRow("kind", kind.Word, kind.Mark, kind.IsOwn) { Kind = kind }),
            .. own.AllFaults.Select(fault => new OwnWordRow("fault", fault.Word, "", own.Faults.Contains(fault))),
            .. own.AllTechniques.Select(technique => new OwnWordRow("technique", technique.Word, "", own.Techniques.Contains(technique))),
        ];
        _rows = Listing.Of(Columns, _all, Cells);
    }

    private static string[] Cells(OwnWordRow row) => row.Kind is { } kind
        ? [row.What, row.Word, row.Mark, Sign(kind.InSize), Sign(kind.InTotal), Sign(kind.ForSale), Sign(row.IsOwn)]
        : [row.What, row.Word, "", "", "", "", Sign(row.IsOwn)];

    private static string Sign(bool yes) => yes ? "yes" : "";
}

/// <summary>A word of a growing list; the kind where it is one.</summary>
internal sealed record OwnWordRow(string What, string Word, string Mark, bool IsOwn)
{
    public NumberingKind? Kind { get; init; }
}
