using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>Finds the largest size at which every word of a label is printed: nothing is ever cut.</summary>
internal static class LabelFit
{
    /// <summary>Points: no text on a label is smaller.</summary>
    public const double Floor = 6;

    /// <summary>Millimetres from line to line for each point of size.</summary>
    public const double LeadingOfSize = Typesetter.Point * 1.22;

    private const double LeadSize = 11.5;

    // Smaller than this on one line, two lines of larger letters read better.
    private const double LeastOnOneLine = 8.5;

    private const double OthersToLead = 0.72;

    /// <returns>Null if it does not fit even at the floor with words broken.</returns>
    public static LabelText? Fit(IReadOnlyList<string> lines, double width, double height, Typesetter type)
    {
        var oneLineEach = Sizes(LeastOnOneLine).Select(size => Set(lines, size, width, type, Breaking.None));
        var wrapped = Sizes(Floor).Select(size => Set(lines, size, width, type, Breaking.Spaces));
        var last = new[] { Set(lines, Floor, width, type, Breaking.Words) };

        return oneLineEach.Concat(wrapped).Concat(last).FirstOrDefault(text => text is not null && text.Height <= height);
    }

    private enum Breaking
    {
        None,
        Spaces,
        Words,
    }

    private static IEnumerable<double> Sizes(double smallest)
    {
        for (var size = LeadSize; size >= smallest; size -= 0.25)
        {
            yield return size;
        }
    }

    private static LabelText? Set(IReadOnlyList<string> lines, double size, double width, Typesetter type, Breaking breaking)
    {
        List<(Setting, string)> set = [];

        for (var i = 0; i < lines.Count; i++)
        {
            var setting = i == 0 ? new Setting(Face.SerifSemiBold, size) : new Setting(Face.Serif, Math.Max(Floor, size * OthersToLead));
            var wrapped = breaking == Breaking.Words ? setting.Wrap(lines[i], width, type) : setting.WrapWhole(lines[i], width, type);

            if (wrapped is null || (breaking == Breaking.None && wrapped.Count > 1))
            {
                return null;
            }

            set.AddRange(wrapped.Select(words => (setting, words)));
        }

        return new(set);
    }
}
