using EditionRegister.Domain.Pictures;
using EditionRegister.Formats.Pictures;
using EditionRegister.Store.Pictures;

namespace EditionRegister.UseCases.Pictures;

/// <summary>A picture file that was read whole and judged; its bytes are read again when they are copied, so that many files never lie in memory at once.</summary>
internal sealed record PictureTaken(string Path, long Length, string Sha256, PictureRead Read)
{
    public string FileName => System.IO.Path.GetFileName(Path);

    /// <exception cref="Domain.RefusedException">picture-not-a-file, picture-not-opened, picture-too-large, or what <see cref="PictureFile"/> refuses.</exception>
    public static PictureTaken From(string path)
    {
        FileInfo file = new(path);

        // Devices and pipes have no length; a link could be changed to another file once the picture is on record.
        if (!file.Exists || file.LinkTarget is not null || file.Length == 0)
        {
            throw PictureRefusals.NotAFile(path);
        }

        if (file.Length > PictureFile.MostBytes)
        {
            throw PictureFileRefusals.TooManyBytes(file.Name, file.Length);
        }

        try
        {
            var bytes = File.ReadAllBytes(path);

            return new PictureTaken(path, bytes.LongLength, ImagesFolder.HashOf(bytes), PictureFile.Read(bytes, file.Name));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw PictureRefusals.NotOpened(path, failure.Message);
        }
    }

    public NewPicture Of(PictureSubject subject, PictureWords words) => new()
    {
        Subject = subject,
        Sha256 = Sha256,
        Media = Read.Media,
        Bytes = Length,
        Width = Read.Width,
        Height = Read.Height,
        FileName = FileName,
        Caption = words.Caption,
        Credit = words.Credit,
        Taken = words.Taken ?? Domain.Dates.RecordedDate.None,
    };
}
