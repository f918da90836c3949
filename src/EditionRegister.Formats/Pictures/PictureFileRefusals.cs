using System.Globalization;
using EditionRegister.Domain;

namespace EditionRegister.Formats.Pictures;

/// <summary>Files that are no pictures the register can keep. Nothing of them is taken in.</summary>
public static class PictureFileRefusals
{
    public static RefusedException NotRead(string fileName) => new(
        "picture-not-read", $"{fileName} is no JPEG, PNG or WebP by its bytes, whatever it is called. Nothing was changed. Save the picture as one of these and add that.");

    public static RefusedException CutShort(string fileName) => new(
        "picture-cut-short", $"{fileName} begins like a picture and does not hold all of it: it was cut short or damaged. Nothing was changed. Copy it anew from the camera or scanner, and add that.");

    public static RefusedException TooManyPixels(string fileName, int width, int height) => new(
        "picture-too-many-pixels",
        string.Create(CultureInfo.InvariantCulture, $"{fileName} is {width} by {height} pixels; a picture may have {PictureFile.MostPixels / 1_000_000} million. Nothing was changed. Save it smaller and add that."));

    public static RefusedException TooManyBytes(string fileName, long bytes) => new(
        "picture-too-large",
        string.Create(CultureInfo.InvariantCulture, $"{fileName} has {bytes} bytes; a picture may have {PictureFile.MostBytes / 1_000_000} million. Nothing was changed. Save it smaller and add that."));

    public static RefusedException NotDrawn(string fileName) => new(
        "picture-not-drawn", $"{fileName} cannot be unpacked here, for want of memory or because it is damaged. Nothing was written after it. Ask for a smaller side, or look at it with `edreg check --pictures`.");
}
