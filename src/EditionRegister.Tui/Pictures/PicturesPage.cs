using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Tui.Pictures;

/// <summary>The pictures of a work, or of one of its sheets, blocks or editions: what each shows, and whether its file is there.</summary>
internal sealed class PicturesPage(Desk desk, PicturesWanted wanted) : ListPage
{
    private static readonly ListColumn[] Columns = [new("picture", 7, IsRight: true), new("shows", 24, Stretch: 1), new("file", 18), new("pixels", 11, IsRight: true), new("it is", 9)];

    private Work? _work;
    private IReadOnlyList<PictureListed> _pictures = [];
    private Listing _rows = Listing.Of<PictureListed>(Columns, [], _ => []);
    private bool _all;

    public override string Title => _work is not { } work ? "Pictures" : $"Pictures of {wanted.Called(work) ?? Called.Work(work)}";

    public override string Explains =>
        "Pictures that are kept with the register: of a sheet, of a block or plate, or one that stands for the whole edition. n copies a picture in as it is, with everything the camera wrote into it, "
        + "so that it can be evidence one day. w writes copies to show to others, upright and without place, time or names in the file. "
        + "A picture taken off with t is no longer shown and never published; its file stays, and t on it brings it back. A file that is missing is said in its line.";

    public override Listing Rows => _rows;

    public override string Empty => "There is no picture yet. Press n to add one: a JPEG, PNG or WebP from camera, phone or scanner.";

    public override IReadOnlyList<KeyDeed> Keys => _work is not { } work ? [] :
    [
        .. PictureForms.MayAdd(work, wanted) ? [new KeyDeed("n", "add a picture", () => PictureForms.NewAsync(desk, work, wanted))] : (KeyDeed[])[],
        .. Here is { } here ? TakesOff(here) : [],
        .. _pictures.Any(one => one.Picture.IsShown) ? [KeyDeed.Opens("w", "write copies to show", () => PictureForms.Publish(desk, wanted)) with { Explained = "Writes copies for others to see, without anything the camera wrote into the file." }] : (KeyDeed[])[],
        KeyDeed.Doing("v", _all ? "only those shown" : "those taken off too", () => { _all = !_all; Lay(); }) with { Explained = "Lists the pictures that were taken off too, or leaves them away again." },
    ];

    private IReadOnlyList<PictureListed> Shown => _all ? _pictures : [.. _pictures.Where(one => one.Picture.IsShown)];

    private PictureListed? Here => Shown.Count > 0 ? Shown[Current] : null;

    public override async Task RefreshAsync()
    {
        (_work, _pictures) = await desk.Store.Do(register => (
            register.LookAround.Work(wanted.Work),
            wanted.IsOfOneThing ? register.ListPictures.Run(wanted.Of, all: true) : register.ListPictures.Run(work: wanted.Work, all: true)));
        Lay();
    }

    public override IReadOnlyList<Line> Foot(int width) => Here is not { } here ? [] :
    [
        Line.Fact("Shows", PicturesSaid.Shows(here.Work, here.Picture), 10),
        Line.Fact("File", $"{here.Picture.FileName ?? "(erased)"}, {PicturesSaid.Kind(here.Picture)}, {PicturesSaid.Standing(here)}", 10),
        .. here.Picture.Caption is { } caption ? [Line.Fact("Caption", caption, 10)] : (Line[])[],
        .. here.Picture.Credit is { } credit ? [Line.Fact("Taken by", $"{credit}{(here.Picture.Taken.IsKnown ? $", {here.Picture.Taken}" : "")}", 10)] : (Line[])[],
    ];

    private void Lay() => _rows = Listing.Of(Columns, Shown, one =>
        [Counted.Figure(one.Picture.Id), PicturesSaid.Shows(one.Work, one.Picture), one.Picture.FileName ?? "(erased)", PicturesSaid.Pixels(one.Picture), one.IsThere ? Called.Plain(one.Picture.Standing) : "missing"]);

    private IEnumerable<KeyDeed> TakesOff(PictureListed here)
    {
        var isShown = here.Picture.IsShown;

        yield return new KeyDeed("t", isShown ? "take it off" : "put it back", async () =>
        {
            var said = await PictureForms.TurnAsync(desk, here.Picture.Id, isShown);
            await RefreshAsync();
            desk.Say(said, Tone.Good);
            desk.Undo = new Undoing(isShown ? "the taking off" : "the putting back", () => PictureForms.TurnAsync(desk, here.Picture.Id, !isShown));

            return null;
        })
        {
            Explained = "A picture taken off is no longer shown; its row and its file stay, and it can be put back.",
        };
    }
}
