using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Labels;

namespace EditionRegister.Formats.Documents;

/// <summary>Draws sheets of labels as a PDF, to be printed at 100 %: the same labels give the same bytes.</summary>
public static class LabelsPdf
{
    // Labels carry no date; PDF/A wants one, and it must not be the clock's.
    private static readonly DateTime NoDate = DateTime.UnixEpoch;

    /// <summary>Leaves the stream open. Only the first sheet starts at <paramref name="firstPosition"/>, counted from one along the rows.</summary>
    /// <exception cref="RefusedException">Something does not fit on its label or paper; the sentence names the label's code.</exception>
    public static void Write(Stream stream, LabelSheet sheet, IReadOnlyList<Label> labels, int firstPosition, PrinterOffset offset)
    {
        Demand(sheet, labels, firstPosition);

        using Typesetter type = new();
        var pages = LabelPages.Of(sheet, labels, firstPosition, offset, type);
        PdfDrawing.Draw(stream, pages, type, new($"Labels {labels[0].Code} to {labels[^1].Code}", "en", NoDate));
    }

    /// <exception cref="RefusedException">There is no label, or no such position on the sheet.</exception>
    public static void Demand(LabelSheet sheet, IReadOnlyList<Label> labels, int firstPosition)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(labels);

        if (labels.Count == 0)
        {
            throw new RefusedException("labels-none", "No labels were written: nothing was chosen. Name at least one impression.");
        }

        if (firstPosition < 1 || firstPosition > sheet.PerSheet)
        {
            throw new RefusedException(
                "label-position",
                FormattableString.Invariant($"No labels were written: {sheet.Name} has the positions 1 to {sheet.PerSheet}, not {firstPosition}. Count along the rows from the top left."));
        }
    }
}
