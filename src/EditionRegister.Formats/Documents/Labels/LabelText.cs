using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>The lines of one label as they fit: each with its setting, in order.</summary>
internal sealed record LabelText(IReadOnlyList<(Setting Setting, string Words)> Lines)
{
    public double Height => Lines.Sum(line => line.Setting.Size * LabelFit.LeadingOfSize);
}
