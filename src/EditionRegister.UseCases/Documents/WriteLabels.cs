using EditionRegister.Domain;
using EditionRegister.Formats.Documents;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>A file of labels as it was written.</summary>
public sealed record LabelsWritten(string Path, int Labels, int Sheets);

/// <summary>Prints labels for folder, sleeve, mat or backing; never for the sheet itself.</summary>
public sealed class WriteLabels(RegisterStore store, RegisterSettings settings)
{
    /// <param name="choice">Which impressions.</param>
    /// <param name="labelSheet">The label sheet's name.</param>
    /// <param name="firstPosition">The first label that is still there, from one.</param>
    /// <param name="path">Where to; null is labels.pdf in the register's exports folder.</param>
    /// <exception cref="RefusedException">label-sheet-unknown, label-position, label-text-too-long and others.</exception>
    public LabelsWritten Run(ImpressionChoice choice, string labelSheet, int firstPosition = 1, string? path = null)
    {
        var planned = new PlanLabels(store, settings).Run(choice, labelSheet, firstPosition);
        var written = Output.Write(
            path ?? Path.Combine(store.Folder.Exports, "labels.pdf"),
            stream => LabelsPdf.Write(stream, planned.Sheet, planned.Labels, firstPosition, settings.PrinterOffset));

        return new LabelsWritten(written, planned.Labels.Count, planned.Sheets);
    }
}
