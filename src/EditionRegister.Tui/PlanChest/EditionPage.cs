using EditionRegister.Domain;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.PlanChest;

/// <summary>An edition as a tray of its numbers: where each one is, the sheets beside them, and what it all comes to.</summary>
internal sealed class EditionPage : TrayPage
{
    private readonly Desk _desk;
    private readonly long _edition;
    private readonly Marking _marking;
    private readonly EditionDeeds _deeds;
    private SoughtNumber? _begin;
    private EditionTray? _tray;
    private IReadOnlyList<TrayGroup> _groups = [];

    /// <param name="desk">The desk.</param>
    /// <param name="edition">Which edition.</param>
    /// <param name="begin">The number on which the cursor begins, where somebody looked for one.</param>
    public EditionPage(Desk desk, long edition, SoughtNumber? begin = null)
    {
        (_desk, _edition, _begin) = (desk, edition, begin);
        _marking = new Marking(desk, this);
        _deeds = new EditionDeeds(desk, this);
    }

    public override string Title => Seen is { } seen ? seen.Map.Heading : $"Edition {Counted.Figure(_edition)}";

    public override string Explains =>
        "Every number of the edition lies here like a sheet in a numbered tray; proofs have trays of their own, and sheets without a number lie beside them. "
        + "The letter behind a number says where its sheet is, or that there is none; the letters that occur are explained under the tray. "
        + "A sign behind the letter says that a check found something: ! a contradiction, two facts that cannot both be true; ~ a query, something to look into; · a note. "
        + "A sign before a heading is about the whole numbering. Under the tray you read about the number the cursor is on. "
        + "Mark sheets with Space to do one thing to several of them; without marks it is done to the sheet the cursor is on.";

    /// <summary>What was read last; null before that, or where the edition is no more.</summary>
    public EditionSeen? Seen { get; private set; }

    public IReadOnlyList<TraySlot> Slots => _tray?.Slots ?? [];

    /// <summary>The cell the cursor is on.</summary>
    public TraySlot? Here => Slots.Count > 0 ? Slots[Current] : null;

    public override IReadOnlyList<TrayGroup> Groups => _groups;

    public override IReadOnlyList<KeyDeed> Keys => Seen is null ? [] :
    [
        .. (IEnumerable<KeyDeed>)
        [
            .. Here?.Code is { } code ? [KeyDeed.Opens("Enter", "open the sheet", () => new ImpressionPage(_desk, code))] : (KeyDeed[])[],
            .. _marking.Keys(),
            .. _deeds.OfTheNumber(),
            .. _deeds.OfTheEdition(),
            .. Chosen() is null ? [] : SheetDeeds.Keys(_desk, Chosen),
            .. _marking.MoreKeys(),
        ],
    ];

    public override IReadOnlyList<Line> Head(int width) =>
        Seen is { } seen ? EditionHead.Of(seen, _marking.Said, width) : [Line.Of("This edition is not in the register.", Tone.Quiet)];

    public override IReadOnlyList<Line> Foot(int width) => Seen is { } seen ? EditionFoot.Of(seen, _tray!, Here, width) : [];

    public override async Task RefreshAsync()
    {
        var before = Here;

        try
        {
            Seen = await _desk.Store.Do(register => EditionSeen.Read(register, _edition));
        }
        catch (RefusedException)
        {
            (Seen, _tray, _groups) = (null, null, []);
            throw;
        }

        _tray = new EditionTray(Seen);
        Current = _tray.Find(before) ?? (_begin is { } begin ? _tray.Find(begin, Seen.Work) : null) ?? Current;
        _begin = null;
        Lay();
    }

    /// <summary>Draws the cells anew: marks have changed.</summary>
    public void Lay() => _groups = _tray?.Groups(_desk.Marked) ?? [];

    /// <summary>The marked sheets of this tray, else the one the cursor is on; empty where there is none.</summary>
    public IReadOnlyList<TraySlot> ChosenSlots => _marking.Here is { Count: > 0 } marked ? marked : Here is { Code: not null } here ? [here] : [];

    /// <summary>The sheets a deed is about, and how they are called.</summary>
    public ChosenSheets? Chosen() =>
        Seen is { } seen && ChosenSlots is { Count: > 0 } slots
            ? new ChosenSheets(new ImpressionChoice { Sheets = string.Join(", ", slots.Select(slot => slot.Code)) }, SheetsCalled.Of(seen.Work, slots))
            : null;
}
