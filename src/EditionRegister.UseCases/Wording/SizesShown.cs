using EditionRegister.Domain.Sizes;

namespace EditionRegister.UseCases.Wording;

/// <summary>Sizes of the register as they are shown; damaged ones are not known.</summary>
public static class SizesShown
{
    /// <param name="height">Micrometres.</param>
    /// <param name="width">Micrometres.</param>
    /// <param name="units">"mm" or "in".</param>
    public static string? Show(long? height, long? width, string units) =>
        IsLength(height) && IsLength(width) ? new Size(new Length(height!.Value), new Length(width!.Value)).Show(units)
        : IsLength(height) ? $"{new Length(height!.Value).Show(units)} high"
        : IsLength(width) ? $"{new Length(width!.Value).Show(units)} wide"
        : null;

    private static bool IsLength(long? micrometres) => micrometres is >= 1 and <= Length.Largest;
}
