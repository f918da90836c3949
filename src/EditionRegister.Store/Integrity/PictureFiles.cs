using System.Globalization;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Pictures;
using EditionRegister.Store.Reading;

namespace EditionRegister.Store.Integrity;

/// <summary>Compares the pictures on record with the files in the images folder.</summary>
public static class PictureFiles
{
    /// <param name="reader">The register.</param>
    /// <param name="folder">Where it lies.</param>
    /// <param name="hash">Reads every file and hashes it; else only whether it is there, and as long as it should be.</param>
    public static IEnumerable<Finding> Check(Reader reader, RegisterFolder folder, bool hash)
    {
        ImagesFolder images = new(folder);

        foreach (var picture in reader.Pictures())
        {
            if (Wrong(images, picture, hash) is { } wrong)
            {
                yield return FileRule.PicturesAreOnFile.Broken(
                    new Subject("picture", picture.Id, Say($"picture {picture.Id}")),
                    Say($"Picture {picture.Id}{(picture.FileName is { } name ? $" ({name})" : "")} of work {picture.Work}: {ImagesFolder.NameOf(picture.Sha256)} {wrong}."));
            }
        }
    }

    private static string? Wrong(ImagesFolder images, PictureOnRecord picture, bool hash)
    {
        // A name that is no hash could be the way to any file.
        if (picture.Sha256.Length != 64 || !picture.Sha256.All(char.IsAsciiHexDigitLower))
        {
            return "is no name of a picture";
        }

        FileInfo file = new(images.PathOf(picture.Sha256));

        return !file.Exists ? "is missing"
            : file.Length != picture.Bytes ? Say($"has {file.Length} bytes, and the picture that was taken in had {picture.Bytes}")
            : hash && !images.Hashes(picture.Sha256) ? "holds other bytes than the picture that was taken in"
            : null;
    }

    private static string Say(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}
