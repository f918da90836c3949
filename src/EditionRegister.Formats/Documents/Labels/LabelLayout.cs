using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;
using EditionRegister.Formats.Documents.Qr;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>Decides one label: text on the left from the top, the code at the foot, the QR code on the right.</summary>
internal sealed class LabelLayout(Typesetter type)
{
    /// <summary>Millimetres inside the edge of a label where no text is printed, for what printer and knife get wrong.</summary>
    public const double Safety = 1.5;

    // Air between text and code.
    private const double Gap = 1.4;

    // In ems: the height of a capital, and that of one with an accent.
    private const double Capital = 0.715;
    private const double Accented = 1;

    // In ems: how far the tail of a Q in the code hangs below the line.
    private const double Tail = 0.23;

    // Below this the label's whole height is used, however it lies beside the QR code.
    private const double LeastAligned = 9;

    public void Place(PageBuilder page, Box box, Label label)
    {
        var qr = label.Link is { } link ? QrMatrix.Of(link) : null;

        var qrBoxes = LabelQr.Boxes(box, qr, label.Code);

        if (!qrBoxes.Any(qrBox => TryPlace(page, box, label, qr, qrBox)))
        {
            throw CodeSetting(label.Code, WidthBeside(box, qrBoxes[^1])) is null ? TooNarrow(label) : TooLong(label);
        }
    }

    private bool TryPlace(PageBuilder page, Box box, Label label, QrMatrix? qr, Box? qrBox)
    {
        var left = TextLeft(box);
        var width = WidthBeside(box, qrBox);

        if (CodeSetting(label.Code, width) is not { } code)
        {
            return false;
        }

        var (top, bottom) = (box.Y + Safety, box.Y + box.Height - Safety - (code.Size * Tail * Typesetter.Point));
        var text = qr is null ? null : BesideQr(label, qr, qrBox!.Value, width, code, ref top, ref bottom);
        var above = text is null ? Accented : Capital;
        text ??= LabelFit.Fit(label.Lines, width, Fits(Accented, top, bottom, code), type);

        if (text is null)
        {
            return false;
        }

        foreach (var (setting, words, baseline) in text.Placed(above))
        {
            page.Add(setting.At(left, top + baseline, words));
        }

        page.Add(code.At(left, bottom, label.Code));

        if (qr is not null)
        {
            page.Qr(qrBox!.Value, qr);
        }

        return true;
    }

    private static double TextLeft(Box box) => box.X + Safety + 0.5;

    // The quiet zone is all the gap that is needed.
    private static double WidthBeside(Box box, Box? qrBox) => (qrBox?.X ?? box.X + box.Width - Safety) - TextLeft(box);

    // Where there is room for it, the first line starts level with the code's modules and the last stands on their foot.
    private LabelText? BesideQr(Label label, QrMatrix qr, Box qrBox, double width, Setting code, ref double top, ref double bottom)
    {
        var quiet = qrBox.Width / qr.ModulesWithQuiet * QrMatrix.QuietModules;
        var highest = top + ((Accented - Capital) * LeastAligned * 1.3 * Typesetter.Point);
        var (from, to) = (Math.Max(qrBox.Y + quiet, highest), Math.Min(qrBox.Y + qrBox.Height - quiet, bottom));

        if (LabelFit.Fit(label.Lines, width, Fits(Capital, from, to, code), type) is not { LeadSize: >= LeastAligned } text)
        {
            return null;
        }

        (top, bottom) = (from, to);
        return text;
    }

    private static Func<LabelText, bool> Fits(double above, double top, double bottom, Setting code) =>
        text => top + text.Height(above) + Gap <= bottom - (code.Size * Capital * Typesetter.Point);

    private Setting? CodeSetting(string code, double width)
    {
        for (var size = 9.5; size >= LabelFit.Floor; size -= 0.25)
        {
            Setting setting = new(Face.SansSemiBold, size, Tracking: 0.2);

            if (setting.Width(code, type) <= width)
            {
                return setting;
            }
        }

        return null;
    }

    private static RefusedException TooNarrow(Label label) => new(
        "label-too-narrow",
        $"No labels were written: the code {label.Code} does not fit on its label, or not beside its QR code. Choose larger labels, or print without links.");

    private static RefusedException TooLong(Label label) => new(
        "label-text-too-long",
        $"No labels were written: the text of {label.Code} does not fit on its label even at 6 points. Choose larger labels or fewer lines.");
}
