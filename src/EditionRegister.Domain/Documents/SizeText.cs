using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Documents;

/// <summary>Sizes from the micrometres of a print run; what no length can be is not known.</summary>
internal static class SizeText
{
    public static Length? LengthOf(long? micrometres) => micrometres is >= 1 and <= Length.Largest ? new Length(micrometres.Value) : null;

    public static Size? Of(long? height, long? width) => LengthOf(height) is { } high && LengthOf(width) is { } wide ? new Size(high, wide) : null;

    // Height first, as cataloguers have it (CCO); a buyer is told so.
    public static string OnCertificate(long? height, long? width, SizeStyle sizes) =>
        Of(height, width) is { } size ? $"{sizes.Show(size)}{(sizes.HasBrackets ? ", height × width" : " (height × width)")}"
        : LengthOf(height) is { } high ? $"height {sizes.Show(high)}, width {CertificateFacts.NotKnown}"
        : LengthOf(width) is { } wide ? $"width {sizes.Show(wide)}, height {CertificateFacts.NotKnown}"
        : CertificateFacts.NotKnown;
}
