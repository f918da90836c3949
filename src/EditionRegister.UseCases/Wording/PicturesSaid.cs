using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was done with pictures, and what one is of, said alike by commands and rooms.</summary>
public static class PicturesSaid
{
    public const string Mind = "The original is kept as it is, with everything the camera wrote into it. Show others what is published from it, and nothing in which people or a child's name can be seen without leave.";

    public const string MindPublished = "Made anew without place, time or names in the file. Who may be seen in a picture, and whose picture it is, is for you to know.";

    /// <summary>3 pictures added: 4, 5, 6. On record already: a.jpg.</summary>
    public static string Added(PicturesAdded added)
    {
        string[] said =
        [
            added.Pictures.Count == 0 ? "No picture added." : $"{Counted.Of(added.Pictures.Count, "picture")} added: {string.Join(", ", added.Pictures.Select(id => Counted.Figure(id)))}.",
            .. added.OnRecord.Count > 0 ? [$"On record already: {string.Join(", ", added.OnRecord)}."] : (string[])[],
            .. added.Unmatched.Count > 0 ? [$"Left out, named after nothing in this register or after several things: {string.Join(", ", added.Unmatched)}."] : (string[])[],
        ];

        return string.Join(' ', said);
    }

    public static string TakenOff(Work work, Picture picture) => $"Picture {Counted.Figure(picture.Id)} of {Called.Work(work)} taken off; its row and its file stay.";

    public static string PutBack(Work work, Picture picture) => $"Picture {Counted.Figure(picture.Id)} of {Called.Work(work)} is shown again.";

    public static string Published(int files) => $"{Counted.Of(files, "picture")} written for others to see.";

    /// <summary>7KQ4-M2X3, 1/3; stands for edition 1.</summary>
    public static string Shows(Work work, Picture picture)
    {
        var sheet = work.Impressions.FirstOrDefault(one => one.Id == picture.Impression);
        var matrix = work.Matrices.FirstOrDefault(one => one.Id == picture.Matrix);
        string?[] parts =
        [
            sheet is null ? null : $"{sheet.ShownCode}, {work.NumberOf(sheet)}",
            matrix is null ? null : MatrixText.Of(work, matrix),
            picture.Edition is { } edition ? $"stands for edition {Counted.Figure(edition)}" : null,
        ];

        return string.Join("; ", parts.OfType<string>());
    }

    public static string Kind(Picture picture) => picture.Media switch { "image/jpeg" => "JPEG", "image/png" => "PNG", "image/webp" => "WebP", _ => picture.Media };

    /// <summary>4000 × 3000.</summary>
    public static string Pixels(Picture picture) => $"{Counted.Figure(picture.Width)} × {Counted.Figure(picture.Height)}";

    /// <summary>Shown, taken off, or what became of its file.</summary>
    public static string Standing(PictureListed listed) => listed.IsThere ? Called.Plain(listed.Picture.Standing) : $"{Called.Plain(listed.Picture.Standing)}, file missing or changed";
}
