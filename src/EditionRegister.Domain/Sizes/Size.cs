using System.Diagnostics.CodeAnalysis;

namespace EditionRegister.Domain.Sizes;

/// <summary>The size of an image, a plate or a sheet: height first, then width.</summary>
public sealed record Size(Length Height, Length Width)
{
    /// <summary>Shown next to every field and in every message that asks for a size.</summary>
    public const string Form = "310 x 220 (height x width in millimetres)";

    /// <summary>Two lengths in millimetres with x or × between them, height first.</summary>
    public static bool TryParseMillimetres(string? text, [NotNullWhen(true)] out Size? value)
    {
        value = (text ?? "").Split('x', 'X', '×') is [var first, var second]
            && Length.TryParseMillimetres(first, out var height)
            && Length.TryParseMillimetres(second, out var width)
                ? new Size(height, width)
                : null;

        return value is not null;
    }

    /// <summary>For people, with the unit once: <c>310 × 220 mm</c>.</summary>
    /// <param name="unit">"mm" or "in".</param>
    public string Show(string unit) => $"{Height.Figures(unit)} × {Width.Show(unit)}";

    public override string ToString() => Show("mm");
}
