using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Tests.Integrity;

namespace EditionRegister.Domain.Tests.Impressions;

/// <summary>Piles of graded sheets, each by its five marks: registration, inking, edges, cleanness, likeness; 0 is that nobody looked.</summary>
internal static class Graded
{
    public static IReadOnlyList<Impression> Pile(params IReadOnlyList<int[]> marks) => [.. marks.Select((five, at) => Harbour.Sheet(at + 1, at + 1) with { Standing = "pulled", Grade = Grade(five) })];

    public static Grade Grade(int[] marks) => new()
    {
        Id = 1, V = 1, Registration = Mark(marks[0]), Inking = Mark(marks[1]), Edges = Mark(marks[2]), Cleanness = Mark(marks[3]), Likeness = Mark(marks[4]),
        Against = "guide-sheet", Graded = RecordedDate.None,
    };

    /// <summary>The places in the pile that are proposed.</summary>
    public static IReadOnlyList<int> Places(Proposal proposal) => [.. proposal.Sheets.Select(one => one.Sheet.Ordinal)];

    private static int? Mark(int mark) => mark == 0 ? null : mark;
}
