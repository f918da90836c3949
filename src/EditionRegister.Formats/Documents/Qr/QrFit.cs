using EditionRegister.Domain;

namespace EditionRegister.Formats.Documents.Qr;

/// <summary>How large a QR code is printed.</summary>
internal static class QrFit
{
    /// <summary>The preferred side in millimetres, quiet zone included, or as much more as its modules need to be read.</summary>
    /// <exception cref="RefusedException">Even at the largest side its modules would be too small.</exception>
    public static double Side(QrMatrix matrix, double preferred, double largest, string code)
    {
        var needed = matrix.ModulesWithQuiet * QrMatrix.SmallestModule;

        return needed <= largest
            ? Math.Max(needed, Math.Min(preferred, largest))
            : throw new RefusedException(
                "qr-too-dense",
                FormattableString.Invariant($"Nothing was written: the QR code of {code} needs {needed:0.#} mm to be read by a phone, and there is room for {largest:0.#} mm. Choose a shorter base_url or larger labels, or print without links."));
    }
}
