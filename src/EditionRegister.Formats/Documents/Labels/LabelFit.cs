using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Labels;

/// <summary>Finds the largest size at which every word of a label is printed: nothing is ever cut.</summary>
internal static class LabelFit
{
    /// <summary>Points: no text on a label is smaller.</summary>
    public const double Floor = 6;

    private const double LargestLead = 11;

    // Smaller than this on one line, two lines of larger letters read better.
    private const double LeastOnOneLine = 9;

    // Smaller than this with whole words, a broken word reads better.
    private const double LeastWithWholeWords = 7.5;

    private const double OthersToLead = 0.74;

    /// <summary>On one line each, else wrapped at spaces, else with long words broken, each time as large as fits; null if nothing does.</summary>
    public static LabelText? Fit(IReadOnlyList<string> lines, double width, Func<LabelText, bool> fits, Typesetter type)
    {
        var tries = Sizes(LargestLead, LeastOnOneLine).Select(size => Set(lines, size, width, type, Breaking.None))
            .Concat(Sizes(LargestLead, LeastWithWholeWords).Select(size => Set(lines, size, width, type, Breaking.Spaces)))
            .Concat(Sizes(LeastOnOneLine, Floor).Select(size => Set(lines, size, width, type, Breaking.Words)));

        return tries.FirstOrDefault(text => text is not null && fits(text));
    }

    private enum Breaking
    {
        None,
        Spaces,
        Words,
    }

    private static IEnumerable<double> Sizes(double largest, double smallest)
    {
        for (var size = largest; size >= smallest; size -= 0.25)
        {
            yield return size;
        }
    }

    private static LabelText? Set(IReadOnlyList<string> lines, double size, double width, Typesetter type, Breaking breaking)
    {
        List<(Setting, string, bool)> set = [];
        var others = Others(lines, size, width, type);

        for (var i = 0; i < lines.Count; i++)
        {
            var setting = i == 0 ? new Setting(Face.SerifSemiBold, size) : others;
            var wrapped = breaking == Breaking.Words ? setting.Wrap(lines[i], width, type) : setting.WrapWhole(lines[i], width, type);

            if (wrapped is null || (breaking == Breaking.None && wrapped.Count > 1))
            {
                return null;
            }

            set.AddRange(wrapped.Select((words, line) => (setting, words, i == 1 && line == 0)));
        }

        return new(set);
    }

    // All the other lines in one size, and rather a little smaller than over two lines.
    private static Setting Others(IReadOnlyList<string> lines, double lead, double width, Typesetter type)
    {
        var largest = Math.Max(Floor, lead * OthersToLead);
        var whole = Sizes(largest, Floor)
            .Select(size => new Setting(Face.Serif, size))
            .FirstOrDefault(setting => lines.Skip(1).All(line => setting.Width(line, type) <= width));

        return whole ?? new Setting(Face.Serif, largest);
    }
}
