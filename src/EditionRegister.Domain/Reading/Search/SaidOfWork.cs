using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>The year and the technique of a work as written, folded for searching.</summary>
public static class SaidOfWork
{
    /// <summary>A shorter word is in nearly every year and every technique, and asks for neither.</summary>
    public const int LeastLength = 3;

    /// <summary>Each followed by a line feed.</summary>
    public static string Folded(string? year, string? technique) => $"{Of(year)}{Of(technique)}";

    private static string Of(string? text) => string.IsNullOrWhiteSpace(text) ? "" : SearchText.Fold(text) + "\n";
}
