using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>Decides whole sheets of labels.</summary>
internal static class LabelPages
{
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
            layout.Place(pages[number], box, label);
        }

        return [.. pages.Select(page => page.Build())];
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
