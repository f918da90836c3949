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

    private const double WidestQrShare = 0.45;
    private const double LargestQr = 30;

    // Air between text and code.
    private const double Gap = 0.8;

    public void Place(PageBuilder page, Box box, Label label)
    {
        var qr = label.Link is { } link ? QrMatrix.Of(link) : null;
        var qrBox = qr is null ? (Box?)null : QrBox(box, qr, label.Code);
        var left = box.X + Safety + 0.5;
        var width = (qrBox?.X ?? box.X + box.Width - Safety) - left;
        var bottom = box.Y + box.Height - Safety;
        var code = CodeSetting(label.Code, width) ?? throw TooNarrow(label);
        var codeHeight = code.Size * LabelFit.LeadingOfSize;
        var room = box.Height - (2 * Safety) - codeHeight - Gap;
        var text = LabelFit.Fit(label.Lines, width, room, type) ?? throw TooLong(label);

        PlaceText(page, text, left, box.Y + Safety);
        page.Add(code.At(left, bottom - (codeHeight * 0.25), label.Code));

        if (qr is not null)
        {
            page.Qr(qrBox!.Value, qr);
        }
    }

    private static void PlaceText(PageBuilder page, LabelText text, double left, double y)
    {
        foreach (var (setting, words) in text.Lines)
        {
            var height = setting.Size * LabelFit.LeadingOfSize;
            page.Add(setting.At(left, y + (height * 0.82), words));
            y += height;
        }
    }

    // The quiet zone may lie in the safety strip, the modules may not.
    private static Box QrBox(Box box, QrMatrix qr, string code)
    {
        var largest = Math.Min(box.Height, box.Width / 2);
        var preferred = Math.Min(Math.Min(box.Height - 1, box.Width * WidestQrShare), LargestQr);
        var side = QrFit.Side(qr, preferred, largest, code);
        var quiet = side / qr.ModulesWithQuiet * QrMatrix.QuietModules;
        var inset = Math.Max(0, Safety - quiet);

        return new(box.X + box.Width - side - inset, box.Y + ((box.Height - side) / 2), side, side);
    }

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
        $"No labels were written: the code {label.Code} does not fit beside its QR code. Choose larger labels, or print without links.");

    private static RefusedException TooLong(Label label) => new(
        "label-text-too-long",
        $"No labels were written: the text of {label.Code} does not fit on its label even at 6 points. Choose larger labels or fewer lines.");
}
