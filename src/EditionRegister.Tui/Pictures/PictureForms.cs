using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.ReadingIn;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Tui.Pictures;

/// <summary>What is asked when a picture is added, and when copies are written for others to see.</summary>
internal static class PictureForms
{
    private const string File = "File";
    private const string Shows = "It shows";
    private const string StandsFor = "Stands for the edition";
    private const string Caption = "Caption";
    private const string Credit = "Taken by";
    private const string Taken = "Taken";
    private const string Folder = "Folder";
    private const string Side = "Longest side";

    /// <summary>A work of which only its title is on record has nothing that a picture could be of.</summary>
    public static bool MayAdd(Work work, PicturesWanted wanted) => Things(work, wanted).Count > 0;

    public static Task<Opening?> NewAsync(Desk desk, Work work, PicturesWanted wanted)
    {
        FilesNearby files = new(".JPG", ".JPEG", ".PNG", ".WEBP");
        var things = Things(work, wanted);

        return Task.FromResult<Opening?>(new Form($"Add a picture of {wanted.Called(work) ?? Called.Work(work)}", [
            new Field(File) { IsNeeded = true, Form = "a JPEG, PNG or WebP, such as front.jpg or ~/Pictures/front.jpg", Wrong = TypedPath.Wrong, Known = files.Of },
            .. things.Count > 1 ? [Field.OneOf(Shows, [.. things.Select(thing => thing.Called)])] : (Field[])[],
            .. wanted.Sheet is { } code && EditionOf(work, code) is not null ? [Field.YesNo(StandsFor, given: false)] : (Field[])[],
            new Field(Caption) { Form = "what is to be seen, in words" },
            new Field(Credit) { Form = "who took it" },
            Fields.Date(Taken),
        ], form => AddAsync(desk, work, wanted, things, form))
        {
            Name = "Add a picture",
            OwnEachTime = [File, Caption, StandsFor],
            Caution = PicturesSaid.Mind,
        });
    }

    public static Form Publish(Desk desk, PicturesWanted wanted) => new("Write copies to show to others", [
        new Field(Folder) { Form = "where to, such as ~/website; else the register's own exports folder", Wrong = TypedPath.Wrong },
        new Field(Side, Counted.Figure(WritePublicPictures.UsualSide)) { IsNeeded = true, Form = "pixels, such as 1600", Wrong = typed => SideOf(typed) is null ? "Write a whole number of pixels from 1 to 20000." : null },
    ], form => PublishAsync(desk, wanted, form))
    {
        Name = "Write copies of pictures",
        Caution = PicturesSaid.MindPublished,
    };

    /// <summary>Takes a picture off or puts it back, and answers in a sentence.</summary>
    public static Task<string> TurnAsync(Desk desk, long picture, bool off) => desk.Store.Do(register =>
    {
        var (work, found) = off ? register.TakePictureOff.Run(picture) : register.TakePictureOff.PutBack(picture);

        return off ? PicturesSaid.TakenOff(work, found) : PicturesSaid.PutBack(work, found);
    });

    private static async Task<Saved> AddAsync(Desk desk, Work work, PicturesWanted wanted, IReadOnlyList<(string Called, PictureOf Of)> things, Form form)
    {
        var of = things.Count > 1 ? things.First(thing => thing.Called == form[Shows]).Of : things[0].Of;

        if (wanted.Sheet is { } code && form.Fields.Any(field => field.Label == StandsFor) && form.IsYes(StandsFor))
        {
            of = of with { Edition = EditionOf(work, code) };
        }

        PictureWords words = new(form[Caption], form[Credit], Fields.DateOf(form[Taken]) ?? RecordedDate.None);
        var path = TypedPath.Full(form[File]!);
        var id = await desk.Store.Do(register => register.AddPictures.One(path, of, words));

        return new Saved(PicturesSaid.Added(new PicturesAdded([id], [], [])))
        {
            Undo = new Undoing("the picture", () => TurnAsync(desk, id, off: true)),
        };
    }

    private static async Task<Saved> PublishAsync(Desk desk, PicturesWanted wanted, Form form)
    {
        var folder = form[Folder] is { } typed ? TypedPath.Full(typed) : null;
        desk.Progress("Making the copies…");
        var files = await desk.Store.Do(register => wanted.IsOfOneThing
            ? register.WritePublicPictures.Run(wanted.Of, folder: folder, longestSide: SideOf(form[Side]!)!.Value)
            : register.WritePublicPictures.Run(work: wanted.Work, folder: folder, longestSide: SideOf(form[Side]!)!.Value));

        return new Saved($"{PicturesSaid.Published(files.Count)} {(files.Count == 1 ? files[0] : Path.GetDirectoryName(files[0]))}");
    }

    /// <summary>What a new picture of the work may be of; one thing where that goes without saying.</summary>
    private static IReadOnlyList<(string Called, PictureOf Of)> Things(Work work, PicturesWanted wanted) => wanted.IsOfOneThing
        ? [("", wanted.Of)]
        :
        [
            .. work.Matrices.Select(matrix => ($"{MatrixText.Of(work, matrix)}, matrix {Counted.Figure(matrix.Id)}", new PictureOf(Matrix: matrix.Id))),
            .. work.Editions.Select(edition => ($"edition {Counted.Figure(edition.Id)}", new PictureOf(Edition: edition.Id))),
            .. work.Impressions.Select(sheet => ($"{sheet.ShownCode}, {work.NumberOf(sheet)}", new PictureOf(Sheet: sheet.ShownCode))),
        ];

    private static long? EditionOf(Work work, string code) =>
        work.Impressions.FirstOrDefault(sheet => sheet.ShownCode == code) is { } sheet ? work.EditionOf(sheet)?.Id : null;

    private static int? SideOf(string typed) => int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var side) && side is >= 1 and <= 20_000 ? side : null;
}
