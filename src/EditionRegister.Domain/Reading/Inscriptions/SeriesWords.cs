using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>A kind of proof met in a text: its word, where it ends, whether it stands in the plural, and whether initials only hint at it.</summary>
internal readonly record struct SeriesMet(string Series, int Start, int Next, bool IsPlural, bool IsFaint);

/// <summary>The marks and words for kinds of proof in English, French, Italian, Spanish and German use.</summary>
internal static class SeriesWords
{
    /// <summary>S/P: a state proof to one workshop, a special proof to another.</summary>
    public const string Ambiguous = "S/P";

    // A/P, E.A., P.d.A. and P/A, H.C. and F.C., B.A.T. and R.T.P. as glossaries of the trade give them; W/P and the rarer words from memory.
    private static readonly (string Letters, string Series)[] Initials =
    [
        ("ctp", "C.T.P."), ("bat", "B.A.T."), ("rtp", "B.A.T."), ("pda", "A/P"), ("ap", "A/P"), ("ea", "A/P"), ("pa", "A/P"), ("pp", "P/P"), ("hc", "H.C."), ("fc", "H.C."),
        ("tp", "T/P"), ("wp", "W/P"), ("cp", "cancellation proof"), ("sp", Ambiguous),
    ];

    // Longest first where one begins another.
    private static readonly (string[] Words, string Series)[] Phrases = Ordered(
    [
        ("artist's proof", "A/P"), ("artists proof", "A/P"), ("artist proof", "A/P"), ("artists' proof", "A/P"), ("art proof", "A/P"), ("artist's proofs", "A/P"),
        ("epreuve d'artiste", "A/P"), ("epreuve artiste", "A/P"), ("epreuves d'artiste", "A/P"), ("prova d'artista", "A/P"), ("prova d'autore", "A/P"), ("prueba de artista", "A/P"),
        ("prueba de autor", "A/P"), ("kunstlerabzug", "A/P"), ("kunstlerexemplar", "A/P"), ("eigendruck", "A/P"),
        ("printer's proof", "P/P"), ("printers proof", "P/P"), ("printer proof", "P/P"), ("printers' proof", "P/P"),
        ("hors commerce", "H.C."), ("hors de commerce", "H.C."), ("fuori commercio", "H.C."), ("fuera de comercio", "H.C."),
        ("bon a tirer", "B.A.T."), ("ready to print", "B.A.T."), ("right to print", "B.A.T."),
        ("color trial proof", "C.T.P."), ("colour trial proof", "C.T.P."), ("color trail proof", "C.T.P."), ("color proof", "C.T.P."), ("colour proof", "C.T.P."),
        ("trial proof", "T/P"), ("trail proof", "T/P"), ("separation trial proof", "T/P"), ("epreuve d'essai", "T/P"), ("prova di stampa", "T/P"), ("prueba de estampa", "T/P"), ("probedruck", "T/P"), ("probeabzug", "T/P"),
        ("working proof", "W/P"), ("work proof", "W/P"),
        ("workshop proof", "workshop proof"), ("work shop proof", "workshop proof"), ("shop proof", "workshop proof"),
        ("state proof", "state proof"), ("epreuve d'etat", "state proof"), ("prova di stato", "state proof"), ("prueba de estado", "state proof"), ("zustandsdruck", "state proof"),
        ("publisher's proof", "publisher's proof"), ("publishers proof", "publisher's proof"),
        ("progressive proof", "progressive proof"), ("progressive", "progressive proof"), ("cancellation proof", "cancellation proof"), ("cancelled proof", "cancellation proof"),
        ("presentation proof", "presentation proof"), ("archive proof", "archive proof"), ("archival proof", "archive proof"), ("exhibition proof", "exhibition proof"),
        ("estate proof", "estate proof"), ("record proof", "record proof"), ("test print", "test print"), ("test proof", "test print"), ("definitive proof", "definitive proof"),
        ("final proof", "final proof"), ("experimental proof", "experimental proof"), ("separation proof", "separation proof"), ("anthology proof", "anthology proof"),
        ("tamarind impression", "Tamarind impression"), ("preview proof", "preview proof"), ("press proof", "press proof"), ("unique proof", "unique proof"),
    ]);

    private static readonly Dictionary<string, (string[] Words, string Series)[]> ByFirst =
        Phrases.GroupBy(phrase => phrase.Words[0], StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.ToArray(), StringComparer.Ordinal);

    /// <summary>The kind of proof that begins at a token, or null.</summary>
    public static SeriesMet? At(TokenText text, int at) => text.IsWord(at) ? Phrase(text, at) ?? Mark(text, at) : null;

    private static SeriesMet? Phrase(TokenText text, int at)
    {
        if (!ByFirst.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Word(at), out var phrases))
        {
            return null;
        }

        foreach (var (words, series) in phrases)
        {
            if (Matches(text, at, words, out var next, out var plural))
            {
                return new SeriesMet(series, at, next, plural, IsFaint: false);
            }
        }

        return null;
    }

    // Words of a phrase are words and apostrophes, as the text is cut; its last may have an s.
    private static bool Matches(TokenText text, int at, string[] words, out int next, out bool plural)
    {
        (next, plural) = (at, false);

        for (var i = 0; i < words.Length; i++, next++)
        {
            var last = i == words.Length - 1;

            if (words[i] == "'" ? text.IsSign(next, '\'') : text.IsWord(next, words[i]))
            {
                continue;
            }

            if (!last || text.Word(next) is not [.. var stem, 's'] || !stem.SequenceEqual(words[i]))
            {
                return false;
            }

            plural = true;
        }

        return true;
    }

    /// <summary>AP, A.P., A/P, A. P., a.p.: letters joined or with dots or slashes between; not the beginning of longer initials.</summary>
    private static SeriesMet? Mark(TokenText text, int at)
    {
        foreach (var (letters, series) in Initials)
        {
            if (Joined(text, at, letters, series) is { } joined)
            {
                return joined;
            }

            if (text.Word(at).Length == 1 && Spelled(text, at, letters) is { } next && !IsAName(text, at, next))
            {
                return new SeriesMet(series, at, next, false, IsFaint: false);
            }
        }

        return null;
    }

    /// <summary>By T. P. Somebody: a small word before, a name behind.</summary>
    private static bool IsAName(TokenText text, int at, int next) =>
        text.Written(at - 1) is [>= 'a' and <= 'z', ..] && text.Written(next) is [>= 'A' and <= 'Z', >= 'a' and <= 'z', ..];

    private static SeriesMet? Joined(TokenText text, int at, string letters, string series)
    {
        var word = text.Word(at);
        var plural = word.Length == letters.Length + 1 && word[^1] == 's' && char.IsAsciiLetterUpper(text.Written(at)[0]);

        if (!(plural ? word[..^1] : word).SequenceEqual(letters))
        {
            return null;
        }

        // "Bat" and "Ap" are words; "PdA" is how it is written.
        var written = text.Written(at);
        var capitals = Capitals(plural ? written[..^1] : written) || written is "PdA";
        var small = Small(written);
        var next = text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? at + 2 : at + 1;

        return capitals || small ? new SeriesMet(series, at, next, plural, IsFaint: small) : null;
    }

    private static int? Spelled(TokenText text, int at, string letters)
    {
        if (at > 0 && !text.IsApart(at) && text.IsAnySign(at - 1, ".") && text.IsWord(at - 2))
        {
            return null;
        }

        for (var i = 0; i < letters.Length; i++)
        {
            if (text.Word(at) is not [var letter] || letter != letters[i])
            {
                return null;
            }

            at++;

            if (i < letters.Length - 1)
            {
                if (!text.IsAnySign(at, "./") || text.IsApart(at))
                {
                    return null;
                }

                at++;
            }
        }

        at = text.IsSign(at, '.') && !text.IsApart(at) ? at + 1 : at;

        // E.A.D. and A.P.S. are somebody's initials.
        var goesOn = (text.IsSign(at - 1, '.') || text.IsSign(at, '.')) && text.Word(at).Length == 1 && !text.IsApart(at);

        return goesOn || (text.IsWord(at) && !text.IsApart(at) && !text.IsSign(at - 1, '.')) ? null : at;
    }

    private static bool Capitals(ReadOnlySpan<char> word)
    {
        foreach (var letter in word)
        {
            if (!char.IsAsciiLetterUpper(letter))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Small(ReadOnlySpan<char> word)
    {
        foreach (var letter in word)
        {
            if (!char.IsAsciiLetterLower(letter))
            {
                return false;
            }
        }

        return true;
    }

    private static (string[] Words, string Series)[] Ordered((string Phrase, string Series)[] phrases) =>
        [.. phrases.Select(one => (Cut(one.Phrase), one.Series)).OrderByDescending(one => one.Item1.Length)];

    private static string[] Cut(string phrase) => phrase.Replace("'", " ' ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
