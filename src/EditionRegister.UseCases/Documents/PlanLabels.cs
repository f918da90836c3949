using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents;
using EditionRegister.Formats.Templates;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>Composes labels and counts the sheets they need, without drawing any.</summary>
public sealed class PlanLabels(RegisterStore store, RegisterSettings settings)
{
    /// <param name="choice">Which impressions.</param>
    /// <param name="labelSheet">The label sheet's name.</param>
    /// <param name="firstPosition">The first label that is still there, from one.</param>
    /// <exception cref="RefusedException">label-sheet-unknown, label-position, or what was chosen cannot be found.</exception>
    public LabelsPlanned Run(ImpressionChoice choice, string labelSheet, int firstPosition = 1)
    {
        var sheet = LabelSheets.Named(labelSheet, store.Folder.Templates);
        var labels = store.Read(reader => ImpressionsChosen.Find(reader, choice)
            .SelectMany(chosen => chosen.Sheets.Select(impression => LabelComposer.Of(chosen.Work, impression, Links.Of(settings, impression), settings.Sizes)))
            .ToList());
        LabelsPdf.Demand(sheet, labels, firstPosition);

        return new LabelsPlanned(sheet, labels, firstPosition);
    }
}
