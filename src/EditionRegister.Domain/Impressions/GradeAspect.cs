namespace EditionRegister.Domain.Impressions;

/// <summary>What a sheet is looked at for when the pile is graded. A mark is 1, poor, to 5, as good as it gets. Common practice, no source.</summary>
/// <param name="Word">Its permanent word, which is also the fact it is kept under.</param>
/// <param name="Asks">What the eye asks.</param>
public sealed record GradeAspect(string Word, string Asks)
{
    public const int Poorest = 1;
    public const int Best = 5;

    public static GradeAspect Registration { get; } = new("registration", "do the colours lie where they should");

    public static GradeAspect Inking { get; } = new("inking", "is the ink even, neither thin nor filled in");

    public static GradeAspect Edges { get; } = new("edges", "are the edges sharp and the margins square");

    public static GradeAspect Cleanness { get; } = new("cleanness", "is the paper free of prints, specks and stains");

    public static GradeAspect Likeness { get; } = new("likeness", "how near is it to what it is held against");

    /// <summary>In the order in which they are looked at.</summary>
    public static IReadOnlyList<GradeAspect> All { get; } = [Registration, Inking, Edges, Cleanness, Likeness];

    public static IReadOnlyList<string> Against { get; } = ["guide-sheet", "bon-a-tirer", "unknown"];

    public static GradeAspect? Of(string word) => All.FirstOrDefault(aspect => aspect.Word == word);

    /// <summary>The mark; null where nobody looked.</summary>
    public int? MarkOf(Grade? grade) => grade is null ? null : Word switch
    {
        "registration" => grade.Registration,
        "inking" => grade.Inking,
        "edges" => grade.Edges,
        "cleanness" => grade.Cleanness,
        _ => grade.Likeness,
    };
}
