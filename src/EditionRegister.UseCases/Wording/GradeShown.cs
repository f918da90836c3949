using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Wording;

/// <summary>Grades in words, said alike by commands and rooms.</summary>
public static class GradeShown
{
    /// <summary>registration 4, inking 5, edges not looked at; beside the guide sheet; 2026-03-01.</summary>
    public static string? Of(Grade? grade)
    {
        if (grade is null)
        {
            return null;
        }

        var marks = string.Join(", ", GradeAspect.All.Select(aspect => $"{aspect.Word} {(aspect.MarkOf(grade) is { } mark ? Counted.Figure(mark) : "not looked at")}"));
        string?[] parts = [marks, Against(grade.Against), grade.Graded.Text, grade.Note];

        return string.Join("; ", parts.OfType<string>());
    }

    /// <summary>4 5 – 5 3, in the order of the aspects; a dash where nobody looked.</summary>
    public static string Marks(Grade? grade) => string.Join(' ', Cells(grade));

    /// <summary>The same, mark by mark.</summary>
    public static IEnumerable<string> Cells(Grade? grade) => GradeAspect.All.Select(aspect => aspect.MarkOf(grade) is { } mark ? Counted.Figure(mark) : "–");

    public static string? Against(string against) => against switch
    {
        "guide-sheet" => "beside the guide sheet",
        "bon-a-tirer" => "beside the bon à tirer",
        _ => null,
    };
}
