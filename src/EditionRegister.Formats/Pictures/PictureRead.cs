namespace EditionRegister.Formats.Pictures;

/// <summary>What a picture file is by its bytes, whatever its name says.</summary>
/// <param name="Media">image/jpeg, image/png or image/webp.</param>
/// <param name="Width">Pixels, as stored: a camera held upright says in its metadata that the picture is to be turned.</param>
/// <param name="Height">Pixels.</param>
public sealed record PictureRead(string Media, int Width, int Height);
