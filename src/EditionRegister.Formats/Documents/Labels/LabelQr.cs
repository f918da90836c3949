using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Qr;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>Where the QR code of a label goes: on the right, in the middle of its height.</summary>
internal static class LabelQr
{
    private const double WidestShare = 0.45;

    // Millimetres.
    private const double Largest = 30;

    // Millimetres: well above the smallest that can be read.
    private const double ComfortableModule = 0.42;

    /// <summary>As large as looks well, then as small as still reads well, so that a long title has more room; one null without a QR code.</summary>
    /// <exception cref="RefusedException">The label is too small for a code that a phone can read.</exception>
    public static IReadOnlyList<Box?> Boxes(Box box, QrMatrix? qr, string code)
    {
        if (qr is null)
        {
            return [null];
        }

        var largest = Math.Min(box.Height, box.Width / 2);
        var preferred = Math.Min(Math.Min(box.Height - 1, box.Width * WidestShare), Largest);
        var side = QrFit.Side(qr, preferred, largest, code);
        var smaller = Math.Min(side, QrFit.Side(qr, qr.ModulesWithQuiet * ComfortableModule, largest, code));
        return [BoxOf(box, qr, side), BoxOf(box, qr, smaller)];
    }

    // The quiet zone may lie in the safety strip, the modules may not.
    private static Box BoxOf(Box box, QrMatrix qr, double side)
    {
        var quiet = side / qr.ModulesWithQuiet * QrMatrix.QuietModules;
        var inset = Math.Max(0, LabelLayout.Safety - quiet);

        return new(box.X + box.Width - side - inset, box.Y + ((box.Height - side) / 2), side, side);
    }
}
