using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Who is to have which numbers of an edition, as agreed, and whose they are now.</summary>
internal sealed class DivisionPage(Desk desk, long edition) : ListPage
{
    private static readonly ListColumn[] Columns = [new("numbers", 18, Stretch: 1), new("to", 18, Stretch: 1), new("now", 24, Stretch: 2), new("agreed", 10)];

    private Work? _work;
    private IReadOnlyList<ShareOfEdition> _shares = [];
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => "Division";

    public override string Explains =>
        "When an edition is signed it is often divided: so many for the artist, so many for the workshop, the B.A.T. for the printer. Here stands what was agreed, and beside it whose the sheets are now. "
        + "n adds a share. To agree on something moves and sells nothing: a sheet changes hands by a sale or a gift, and a check notes where one went first to somebody else than agreed.";

    public override Listing Rows => _rows;

    public override string Empty => "Nothing is agreed yet. Press n to say who is to have which numbers.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        new("n", "add a share", async () => DivideForm.Of(desk, edition, _work, await desk.Store.Do(register => register.LookAround.Suggestions()))),
        .. _shares.Count > 0 ? [new KeyDeed("t", "take it back", TakeBackAsync) { Explained = "Takes back what was agreed of these numbers; whose the sheets are stays as it is." }] : (KeyDeed[])[],
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override IReadOnlyList<Line> Head(int width) => _work is { } work ? [Line.Of($"Division of {Called.Edition(work, work.Editions.First(one => one.Id == edition))}", Tone.Strong), Line.Empty] : [];

    public override async Task RefreshAsync()
    {
        var (work, found) = await desk.Store.Do(register => register.LookAround.Edition(edition));
        _work = work;
        _shares = DivisionShown.Of(work, found);
        _rows = Listing.Of(Columns, _shares, share => [share.Numbers, share.Person, share.Now, share.Agreed.Agreed.Text ?? ""]);
    }

    private async Task<Opening?> TakeBackAsync()
    {
        var share = _shares[Current];
        var numbering = _work!.Editions.First(one => one.Id == edition).Find(share.Agreed.Numbering)!;
        var numbers = string.Join(", ", Enumerable.Range(share.Agreed.First, share.Agreed.Last - share.Agreed.First + 1).Select(numbering.Typed));
        var sentence = await desk.Store.Do(register =>
        {
            var count = register.DivideEdition.TakeBack(edition, numbers);
            var (work, found) = register.LookAround.Edition(edition);

            return EditionSaid.Divided(work, found, count, null);
        });
        await RefreshAsync();
        desk.Undo = new Undoing("taking the share back", () => desk.Store.Do(register =>
        {
            var count = register.DivideEdition.Run(edition, numbers, Counted.Figure(share.Agreed.Person), share.Agreed.Agreed, share.Agreed.Note);
            var (work, found) = register.LookAround.Edition(edition);

            return EditionSaid.Divided(work, found, count, share.Person);
        }));
        desk.Say(sentence, Tone.Good);

        return null;
    }
}
