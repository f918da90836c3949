using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Numbers;

/// <summary>The mark of a kind that a register makes for itself: letters and signs that no number and no other mark can be taken for.</summary>
public static class OwnMark
{
    /// <summary>Shown where one is asked for.</summary>
    public const string Form = "letters such as L.P. or bis, without figures, commas and hyphens";

    /// <summary>The most characters a mark may have.</summary>
    public const int Longest = 24;

    private const string Never = ",:-\u2010\u2011\u2012\u2013\u201C\u201D\"";

    public static bool IsOne(string mark) =>
        mark.Length is > 0 and <= Longest
        && mark.Trim() == mark
        && mark.Any(char.IsLetter)
        && !mark.Any(c => char.IsDigit(c) || char.IsControl(c) || Never.Contains(c, StringComparison.Ordinal))
        && !RegisterCode.TryParse(mark, out _);

    /// <summary>What the mark would be taken for: a number of any notation, or the mark of another kind; null where it is free.</summary>
    public static string? TakenFor(string mark, IEnumerable<NumberingKind> others)
    {
        if (others.FirstOrDefault(kind => Plain(kind.Mark) == Plain(mark)) is { } same)
        {
            return same.Name;
        }

        return !PencilledNumber.TryParse(mark, out var read) ? null
            : read.Number is null ? read.Kind.Name
            : "a number";
    }

    /// <summary>A number without the words beside it that may be such a mark; a mark alone counts as the first of one.</summary>
    internal static string Without(string text)
    {
        var kept = text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => !IsOne(word)).ToList();

        return kept.Count == 0 && text.Any(char.IsLetter) ? "1-1" : string.Join(' ', kept);
    }

    // A/P, AP and a.p. are one mark to whoever reads them.
    private static string Plain(string mark) => string.Concat(mark.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
