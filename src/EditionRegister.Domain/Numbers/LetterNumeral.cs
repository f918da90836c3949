namespace EditionRegister.Domain.Numbers;

internal static class LetterNumeral
{
    private const int Letters = 26;
    private const int LongestText = 3;

    public static string Write(int number)
    {
        var text = "";

        for (var rest = number; rest > 0; rest = (rest - 1) / Letters)
        {
            text = (char)('A' + ((rest - 1) % Letters)) + text;
        }

        return text;
    }

    public static int? Read(string text) =>
        InCapitals(text) is { Length: <= LongestText } capitals
            ? capitals.Aggregate(0, (number, letter) => (number * Letters) + (letter - 'A' + 1))
            : null;

    /// <summary>The text in capitals if it is nothing but A-Z or nothing but a-z; null otherwise. The same in every culture.</summary>
    public static string? InCapitals(string text) =>
        text.Length == 0 ? null
        : text.All(char.IsAsciiLetterUpper) ? text
        : text.All(char.IsAsciiLetterLower) ? string.Concat(text.Select(c => (char)(c - 32)))
        : null;
}
