using System.Text.RegularExpressions;

namespace EditionRegister.Domain.Numbers;

/// <summary>The marks as people pencil them, before or behind the number: A/P, AP, A.P., in French, Italian and Spanish too.</summary>
internal static class PencilledMark
{
    // E.A. épreuve d'artiste; P.d.A., P.A. prova d'autore; P/A prueba de artista; F.C. fuori commercio; R.T.P. ready to print.
    private static readonly (string Letters, NumberingKind Kind)[] Initials =
    [
        ("AP", NumberingKind.ArtistsProof), ("EA", NumberingKind.ArtistsProof), ("PdA", NumberingKind.ArtistsProof), ("PA", NumberingKind.ArtistsProof),
        ("PP", NumberingKind.PrintersProof), ("HC", NumberingKind.HorsCommerce), ("FC", NumberingKind.HorsCommerce),
        ("BAT", NumberingKind.BonATirer), ("RTP", NumberingKind.BonATirer), ("TP", NumberingKind.Trial),
        ("CTP", NumberingKind.ColourTrial), ("CP", NumberingKind.Cancellation),
    ];

    private static readonly (Regex First, Regex Last, bool Spelled, NumberingKind Kind)[] Marks =
    [
        .. Initials.Select(mark => Patterns(Written(mark.Letters), spelled: false, mark.Kind)),
        .. NumberingKind.All.Where(kind => kind.Mark.Contains(' ', StringComparison.Ordinal))
            .Select(kind => Patterns(Regex.Escape(kind.Mark).Replace("'", "['’]", StringComparison.Ordinal), spelled: true, kind)),
    ];

    /// <summary>Parts a text into its mark and the rest; without a mark it belongs to the numbered edition.</summary>
    public static (NumberingKind Kind, string Unmarked) Split(string text)
    {
        foreach (var (first, _, spelled, kind) in Marks)
        {
            if (first.Match(text) is { Success: true } mark && (spelled || LooksLikeAMark(mark.Value)))
            {
                return (kind, text[mark.Length..].Trim());
            }
        }

        foreach (var (_, last, spelled, kind) in Marks)
        {
            if (last.Match(text) is { Success: true } mark && (spelled || LooksLikeAMark(mark.Value)))
            {
                return (kind, text[..mark.Index].Trim());
            }
        }

        return (NumberingKind.Numbered, text);
    }

    private static (Regex First, Regex Last, bool Spelled, NumberingKind Kind) Patterns(string mark, bool spelled, NumberingKind kind) =>
        (Made($@"^(?:{mark})(?=$|[ 0-9]|(?<=\.))"), Made($@"(?<=[ 0-9])(?:{mark})$"), spelled, kind);

    private static Regex Made(string pattern) => new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // AP, A/P, A.P, A.P. and A. P.
    private static string Written(string letters) =>
        $"{letters}|{string.Join('/', letters.AsEnumerable())}|{string.Join(@"\. ?", letters.AsEnumerable())}\\.?";

    // "Bat" is a word, and may be a title.
    private static bool LooksLikeAMark(string mark) =>
        mark.AsSpan().IndexOfAny('.', '/') >= 0
        || mark == "PdA"
        || LetterNumeral.InCapitals(mark) is not null;
}
