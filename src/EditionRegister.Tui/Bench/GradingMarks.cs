using EditionRegister.Domain.Impressions;

namespace EditionRegister.Tui.Bench;

/// <summary>The keys that give a mark: five beside each other under the left hand, the poorest at the outside.</summary>
internal static class GradingMarks
{
    public static IReadOnlyList<(string Key, int Mark, string Name)> All { get; } =
        [("a", 1, "poor"), ("s", 2, "weak"), ("d", 3, "fair"), ("f", 4, "good"), ("g", GradeAspect.Best, "best")];

    public static string NameOf(int mark) => All.FirstOrDefault(one => one.Mark == mark).Name ?? Counted.Figure(mark);
}
