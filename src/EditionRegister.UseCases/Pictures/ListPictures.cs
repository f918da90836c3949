using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Pictures;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Pictures;

/// <summary>A picture with its work, where its original lies, and whether anything of the right length lies there.</summary>
public sealed record PictureListed(Work Work, Picture Picture, string Path, bool IsThere);

/// <summary>Lists pictures: those of one thing, of one work, or all.</summary>
public sealed class ListPictures(RegisterStore store)
{
    /// <summary>By work, in the order in which they were added.</summary>
    /// <param name="of">One thing only, or null.</param>
    /// <param name="work">One work only, or null.</param>
    /// <param name="all">Those that were taken off too.</param>
    /// <exception cref="Domain.RefusedException">What is named is not there.</exception>
    public IReadOnlyList<PictureListed> Run(PictureOf? of = null, long? work = null, bool all = false) =>
        store.Read(reader => Find(reader, store.Folder, of, work).Where(one => all || one.Picture.IsShown).ToList());

    internal static IEnumerable<PictureListed> Find(Reader reader, RegisterFolder folder, PictureOf? of, long? work)
    {
        ImagesFolder images = new(folder);
        var found = of?.Find(reader);
        var works = found is { } one ? [one.Work]
            : work is { } id ? [reader.WorkOrRefuse(id)]
            : reader.Pictures().Select(picture => picture.Work).Distinct().Order().Select(reader.WorkOrRefuse);

        return works.SelectMany(shown => shown.Pictures
            .Where(picture => found is not { } named || Shows(picture, named.Subject))
            .Select(picture => new PictureListed(shown, picture, images.PathOf(picture.Sha256), images.Has(picture.Sha256, picture.Bytes))));
    }

    private static bool Shows(Picture picture, PictureSubject subject) =>
        (subject.Impression is null || picture.Impression == subject.Impression)
        && (subject.Matrix is null || picture.Matrix == subject.Matrix)
        && (subject.Edition is null || picture.Edition == subject.Edition);
}
