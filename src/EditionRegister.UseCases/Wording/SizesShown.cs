using EditionRegister.Domain.Sizes;

namespace EditionRegister.UseCases.Wording;

/// <summary>Sizes of the register as they are shown; damaged ones are not known.</summary>
public static class SizesShown
{
    /// <param name="height">Micrometres.</param>
    /// <param name="width">Micrometres.</param>
    /// <param name="sizes">How sizes are written.</param>
    public static string? Show(long? height, long? width, SizeStyle sizes) =>
        IsLength(height) && IsLength(width) ? sizes.Show(new Size(new Length(height!.Value), new Length(width!.Value)))
        : IsLength(height) ? $"{sizes.Show(new Length(height!.Value))} high"
        : IsLength(width) ? $"{sizes.Show(new Length(width!.Value))} wide"
        : null;

    private static bool IsLength(long? micrometres) => micrometres is >= 1 and <= Length.Largest;
}
