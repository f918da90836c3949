namespace EditionRegister.Domain.Numbers;

/// <summary>The marks as people pencil them, before or behind the number: A/P, AP, A.P., in French, Italian and Spanish too.</summary>
internal sealed class PencilledMark
{
    // E.A. épreuve d'artiste; P.d.A., P.A. prova d'autore; P/A prueba de artista; F.C. fuori commercio; R.T.P. ready to print.
    private static readonly PencilledMark[] Marks =
    [
        Initials("AP", NumberingKind.ArtistsProof), Initials("EA", NumberingKind.ArtistsProof), Initials("PdA", NumberingKind.ArtistsProof),
        Initials("PA", NumberingKind.ArtistsProof), Initials("PP", NumberingKind.PrintersProof), Initials("HC", NumberingKind.HorsCommerce),
        Initials("FC", NumberingKind.HorsCommerce), Initials("BAT", NumberingKind.BonATirer), Initials("RTP", NumberingKind.BonATirer),
        Initials("TP", NumberingKind.Trial), Initials("CTP", NumberingKind.ColourTrial), Initials("CP", NumberingKind.Cancellation),
        .. NumberingKind.All.Where(kind => kind.Mark.Contains(' ', StringComparison.Ordinal)).Select(Spelled),
    ];

    private readonly NumberingKind _kind;
    private readonly bool _isSpelled;
    private readonly string[] _writings;

    /// <param name="kind">What it means.</param>
    /// <param name="isSpelled">Words rather than initials.</param>
    /// <param name="writings">Where one begins another, the longer comes first.</param>
    private PencilledMark(NumberingKind kind, bool isSpelled, string[] writings) => (_kind, _isSpelled, _writings) = (kind, isSpelled, writings);

    /// <summary>Parts a text into its mark and the rest; without a mark it belongs to the numbered edition.</summary>
    /// <param name="text">What is pencilled.</param>
    /// <param name="own">Kinds that the register made for itself; their marks are looked for first, the longest before the others.</param>
    public static (NumberingKind Kind, string Unmarked) Split(string text, IReadOnlyList<NumberingKind> own)
    {
        if (!text.Any(char.IsLetter))
        {
            return (NumberingKind.Numbered, text);
        }

        // A mark that damage left empty stands before every text, and is none.
        return own.Count == 0 ? Split(text, Marks) : Split(text, [.. own.Where(kind => kind.Mark.Length > 0).OrderByDescending(kind => kind.Mark.Length).Select(Spelled), .. Marks]);
    }

    private static (NumberingKind Kind, string Unmarked) Split(string text, PencilledMark[] marks)
    {
        foreach (var mark in marks)
        {
            if (mark._writings.FirstOrDefault(writing => mark.Begins(text, writing)) is { } first)
            {
                return (mark._kind, text[first.Length..].Trim());
            }
        }

        foreach (var mark in marks)
        {
            if (mark._writings.FirstOrDefault(writing => mark.Ends(text, writing)) is { } last)
            {
                return (mark._kind, text[..^last.Length].Trim());
            }
        }

        return (NumberingKind.Numbered, text);
    }

    // AP, A/P, A.P, A.P., A. P and A. P.
    private static PencilledMark Initials(string letters, NumberingKind kind)
    {
        var slashed = letters[..1];
        List<string> dotted = [slashed];

        for (var at = 1; at < letters.Length; at++)
        {
            slashed += $"/{letters[at]}";
            dotted = [.. dotted.SelectMany(before => new[] { $"{before}.{letters[at]}", $"{before}. {letters[at]}" })];
        }

        return new(kind, isSpelled: false, [letters, slashed, .. dotted.SelectMany(text => new[] { text + ".", text })]);
    }

    private static PencilledMark Spelled(NumberingKind kind) => new(kind, isSpelled: true, [kind.Mark, kind.Mark.Replace('\'', '’')]);

    private bool Begins(string text, string writing) =>
        text.StartsWith(writing, StringComparison.OrdinalIgnoreCase)
        && (text.Length == writing.Length || writing[^1] == '.' || IsBesideANumber(text[writing.Length]))
        && (_isSpelled || LooksLikeAMark(text[..writing.Length]));

    private bool Ends(string text, string writing) =>
        text.EndsWith(writing, StringComparison.OrdinalIgnoreCase)
        && text.Length > writing.Length
        && IsBesideANumber(text[^(writing.Length + 1)])
        && (_isSpelled || LooksLikeAMark(text[^writing.Length..]));

    private static bool IsBesideANumber(char c) => c == ' ' || char.IsAsciiDigit(c);

    // "Bat" is a word, and may be a title.
    private static bool LooksLikeAMark(string mark) =>
        mark.AsSpan().IndexOfAny('.', '/') >= 0
        || mark == "PdA"
        || LetterNumeral.InCapitals(mark) is not null;
}
