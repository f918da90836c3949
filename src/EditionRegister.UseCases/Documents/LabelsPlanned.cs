using EditionRegister.Domain.Documents;

namespace EditionRegister.UseCases.Documents;

/// <summary>Labels with the sheets they go on, before anything is drawn.</summary>
/// <param name="Sheet">The label sheet.</param>
/// <param name="Labels">In the order in which they are printed.</param>
/// <param name="FirstPosition">The first label that is still there, from one.</param>
public sealed record LabelsPlanned(LabelSheet Sheet, IReadOnlyList<Label> Labels, int FirstPosition)
{
    /// <summary>Sheets of paper that go through the printer.</summary>
    public int Sheets => (Used + Sheet.PerSheet - 1) / Sheet.PerSheet;

    /// <summary>Labels that are left on the last sheet.</summary>
    public int Left => (Sheets * Sheet.PerSheet) - Used;

    /// <summary>Where the next labels begin: on the last sheet, or on a new one.</summary>
    public int NextPosition => (Used % Sheet.PerSheet) + 1;

    private int Used => FirstPosition - 1 + Labels.Count;
}
