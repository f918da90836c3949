using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>The lines of one label as they fit, each with its setting; the first is the leading one.</summary>
internal sealed class LabelText(IReadOnlyList<(Setting Setting, string Words, bool StartsOthers)> lines)
{
    private const double Leading = 1.22;
    private const double Descender = 0.26;

    /// <summary>Points.</summary>
    public double LeadSize => lines.Count == 0 ? 0 : lines[0].Setting.Size;

    /// <summary>Each line with its baseline in millimetres below the top.</summary>
    /// <param name="above">How much of the first line stands above its baseline, in ems.</param>
    public IEnumerable<(Setting Setting, string Words, double Baseline)> Placed(double above)
    {
        var y = 0.0;

        for (var i = 0; i < lines.Count; i++)
        {
            var (setting, words, startsOthers) = lines[i];
            var size = setting.Size * Typesetter.Point;
            y += (size * (i == 0 ? above : Leading)) + (startsOthers ? 0.12 * LeadSize * Typesetter.Point : 0);
            yield return (setting, words, y);
        }
    }

    /// <summary>Millimetres, from the top to the descenders of the last line.</summary>
    public double Height(double above) => Placed(above)
        .Select(line => line.Baseline + (line.Setting.Size * Descender * Typesetter.Point))
        .LastOrDefault();
}
