using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>Decides whole sheets of labels.</summary>
internal static class LabelPages
{
    /// <summary>Millimetres at the edge of the paper that an office printer leaves white, less what the label leaves free itself; common practice, no source.</summary>
    private const double Unprinted = 3;

    public static IReadOnlyList<PageLayout> Of(LabelSheet sheet, IReadOnlyList<Label> labels, int firstPosition, PrinterOffset offset, Typesetter type)
    {
        LabelLayout layout = new(type);
        List<PageBuilder> pages = [];

        foreach (var (label, (number, box)) in labels.Zip(sheet.Place(labels.Count, firstPosition, offset)))
        {
            while (pages.Count <= number)
            {
                pages.Add(new(sheet.PaperWidth, sheet.PaperHeight));
            }

            RefuseOffPaper(sheet, box, label);
            layout.Place(pages[number], Printable(sheet, box), label);
        }

        return [.. pages.Select(page => page.Build())];
    }

    /// <summary>A label at the edge of the paper is used only as far as printers reach.</summary>
    private static Box Printable(LabelSheet sheet, Box box)
    {
        var (left, top) = (Math.Max(box.X, Unprinted), Math.Max(box.Y, Unprinted));
        var (right, bottom) = (Math.Min(box.X + box.Width, sheet.PaperWidth - Unprinted), Math.Min(box.Y + box.Height, sheet.PaperHeight - Unprinted));

        return new Box(left, top, right - left, bottom - top);
    }

    private static void RefuseOffPaper(LabelSheet sheet, Box box, Label label)
    {
        const double safe = LabelLayout.Safety;

        if (box.X < -safe || box.Y < -safe || box.X + box.Width > sheet.PaperWidth + safe || box.Y + box.Height > sheet.PaperHeight + safe)
        {
            throw new RefusedException(
                "label-off-paper",
                $"No labels were written: with this printer offset the label of {label.Code} would run off the paper of {sheet.Name}. Make right_mm and down_mm under [printer] smaller.");
        }
    }
}
