using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Asking;

/// <summary>One answer to a question: its key, what it means, and what comes of it.</summary>
internal sealed record Answer(string Key, string Means, Func<Task<Opening?>> Do);

/// <summary>Something to be answered with one key, such as “Next sheet is 4/12. Signed?”.</summary>
internal sealed class Question(string asked, IReadOnlyList<Answer> answers) : Opening
{
    /// <summary>A whole sentence.</summary>
    public string Asked { get; } = asked;

    /// <summary>Lines between the question and its answers.</summary>
    public IReadOnlyList<Line> Shown { get; init; } = [];

    public IReadOnlyList<Answer> Answers { get; } = answers;

    /// <summary>Yes or no, where no changes nothing.</summary>
    public static Question YesNo(string asked, string yes, Func<Task<Opening?>> doYes) =>
        new(asked, [new Answer("y", yes, doYes), new Answer("n", "leave it as it is", () => Task.FromResult<Opening?>(null))]);
}
