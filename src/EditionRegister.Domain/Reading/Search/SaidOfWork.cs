using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>The year and the technique of a work as written, folded for searching.</summary>
public static class SaidOfWork
{
    private const int LeastFigures = 3;

    /// <summary>Each followed by a line feed.</summary>
    public static string Folded(string? year, string? technique) => $"{Of(year)}{Of(technique)}";

    /// <summary>Whether a word may ask for it: the 2 of drawer 2 is in nearly every year, and asks for none.</summary>
    /// <param name="word">Folded.</param>
    public static bool MayBeAskedBy(string word)
    {
        ArgumentNullException.ThrowIfNull(word);

        return word.Length >= LeastFigures || word.Length == 0 || !word.All(char.IsAsciiDigit);
    }

    private static string Of(string? text) => string.IsNullOrWhiteSpace(text) ? "" : SearchText.Fold(text) + "\n";
}
