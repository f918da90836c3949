namespace EditionRegister.Cli;

/// <summary>One of a closed list of words, exactly as the register calls it.</summary>
internal static class WordValue
{
    public static TryRead<string?> In(IReadOnlyList<string> words) => (string text, out string? value) => (value = words.Contains(text) ? text : null) is not null;

    /// <summary>block, plate or stone.</summary>
    public static string Form(IReadOnlyList<string> words) => $"{string.Join(", ", words.Take(words.Count - 1))} or {words[^1]}";
}
