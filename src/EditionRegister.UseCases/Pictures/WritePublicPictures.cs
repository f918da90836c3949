using System.Globalization;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Works;
using EditionRegister.Formats.Pictures;
using EditionRegister.Store;
using EditionRegister.Store.Pictures;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.UseCases.Pictures;

/// <summary>
/// Writes copies of pictures for others to see, made anew from their pixels, so that nothing is in them of what a camera writes into a file: place, time,
/// names. They are called by codes, never by titles or people.
/// </summary>
public sealed class WritePublicPictures(RegisterStore store)
{
    /// <summary>The longest side of a copy, in pixels, when not said.</summary>
    public const int UsualSide = 1_600;

    /// <summary>Answers the files written. Pictures that were taken off are left out.</summary>
    /// <param name="of">One thing only, or null.</param>
    /// <param name="work">One work only, or null.</param>
    /// <param name="folder">Where to; null is a folder of the register's exports.</param>
    /// <param name="longestSide">Pixels; a smaller picture keeps its size.</param>
    /// <exception cref="Domain.RefusedException">picture-none-shown, picture-file-lost, picture-not-drawn, output-not-written, or what is named is not there.</exception>
    public IReadOnlyList<string> Run(PictureOf? of = null, long? work = null, string? folder = null, int longestSide = UsualSide)
    {
        ImagesFolder images = new(store.Folder);
        var shown = store.Read(reader => ListPictures.Find(reader, store.Folder, of, work).Where(one => one.Picture.IsShown).ToList());

        return shown.Count == 0 ? throw PictureRefusals.NoneToPublish() : [.. shown.Select(one => Write(images, one, folder ?? Path.Combine(store.Folder.Exports, "pictures"), longestSide))];
    }

    private static string Write(ImagesFolder images, PictureListed one, string folder, int longestSide)
    {
        var name = NameOf(one.Work, one.Picture);
        var original = images.Read(one.Picture.Sha256) ?? throw PictureRefusals.FileLost(one.Picture.Id, one.Path);

        return Output.Write(Path.Combine(folder, name), stream => PublicPicture.Write(stream, original, name, longestSide));
    }

    private static string NameOf(Work work, Picture picture)
    {
        var sheet = work.Impressions.FirstOrDefault(one => one.Id == picture.Impression);
        var matrix = work.Matrices.FirstOrDefault(one => one.Id == picture.Matrix);
        var subject = sheet is not null ? sheet.ShownCode
            : matrix?.Code is { } code && RegisterCode.TryParse(code, out var read) ? read.ToString()
            : matrix is not null ? Say($"matrix-{matrix.Id}")
            : Say($"edition-{picture.Edition}");

        return Say($"{subject}-picture-{picture.Id}.jpg");
    }

    private static string Say(FormattableString name) => name.ToString(CultureInfo.InvariantCulture);
}
