using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>
/// Reads sizes as catalogues write them: "15 3/4 x 11 7/8 in. (40 x 30.2 cm)", "image: 300 × 225 mm; sheet: …", parts run together.
/// Height comes before width unless it says otherwise. Where two systems stand side by side the metric one is kept, and it is said whether
/// the other agrees.
/// </summary>
public static class SizeReader
{
    /// <summary>Every size in a text; what is no size is left.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="assumed">What a size without a unit is in. None: nobody knows, and it is not read.</param>
    public static SizesRead Read(string? text, LengthUnit assumed = LengthUnit.None) =>
        string.IsNullOrWhiteSpace(text) ? SizesRead.None : new SizeScan(new TokenText(text), assumed).Run();

    /// <summary>The size of one part, for a field that holds one: named for it in the text, or the only size there without a name.</summary>
    /// <param name="text">What stands in the field.</param>
    /// <param name="part">What the field is for.</param>
    /// <param name="assumed">What a size without a unit is in; the register's fields are in millimetres.</param>
    public static SizeOfPart SizeOf(string? text, SizePart part, LengthUnit assumed = LengthUnit.Millimetre)
    {
        ArgumentNullException.ThrowIfNull(part);

        return SizeOfPart.In(Read(text, assumed), part);
    }
}
