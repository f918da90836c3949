using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>A number in the words of a search, where a mark or a fraction says that it is one; a bare 12 is a word.</summary>
internal static class NumberRead
{
    private static readonly HashSet<string> Before = new(StringComparer.OrdinalIgnoreCase)
    {
        "no", "no.", "nr", "nr.", "number", "numbered", "copy", "edition", "ed", "ed.", "#",
    };

    public static SoughtNumber? Of(IReadOnlyList<string> words, OwnWords own) =>
        EveryWord.WithoutLead(words, Before).Select(core => Plainly(core, own) ?? InWords(core)).FirstOrDefault(read => read is not null);

    /// <summary>Whether there may be one among these words at all: asked once before every run of them is read.</summary>
    public static bool MayBeIn(string text, OwnWords own) => own.Kinds.Count > 0 || EditionStatementReader.Read(text).Kind != StatementKind.None;

    /// <summary>As strictly as what is pencilled on a sheet. Two figures and a mark behind (2 A/P) may be a count of proofs; the mark goes before.</summary>
    private static SoughtNumber? Plainly(IReadOnlyList<string> words, OwnWords own)
    {
        var text = string.Join(' ', words);

        return PencilledNumber.TryParse(text, null, own, out var read, out _) && read.Kind != NumberingKind.Numbered && !(read.Of is null && BeginsWithNumber(words[0]))
            && (read.Number is not null || read.Kind.IsOwn || !text.All(char.IsAsciiLetterLower))
                ? SoughtNumber.From(read)
                : null;
    }

    // 2 A/P and II A/P; not A/P.
    private static bool BeginsWithNumber(string word) =>
        char.IsAsciiDigit(word[0]) || (PencilledNumber.TryParse(word, out var alone) && alone is { Number: not null, Kind.Mark: "" });

    /// <summary>As a cataloguer or an inscription says it: artist's proof 2, épreuve d'artiste II/V.</summary>
    private static SoughtNumber? InWords(IReadOnlyList<string> words)
    {
        var text = string.Join(' ', words);
        var read = EditionStatementReader.Read(text);

        return IsNumber(read) && IsAllOf(text, read) && EveryWord.Counts(words, Said.Of(read), other => Said.Of(EditionStatementReader.Read(other))) ? From(read) : null;
    }

    private static bool IsNumber(EditionStatement read) =>
        read is { Kind: StatementKind.Numbered, Number: not null, Of: not null, State: null, Beside: [] } or { Kind: StatementKind.Proof, Series: not null, State: null, Beside: [] }
        && (read.Number is not null || ProofSeries.KindOf(read.Series!) is not null);

    private static bool IsAllOf(string text, EditionStatement read)
    {
        var (start, length) = read.Span.GetOffsetAndLength(text.Length);

        return text.AsSpan(0, start).Trim("#(\"“").IsEmpty && text.AsSpan(start + length).Trim(".,;)\"”").IsEmpty;
    }

    private static SoughtNumber From(EditionStatement read)
    {
        var kind = ProofSeries.KindOf(read.Series!);
        var (notation, number) = read.Letter is { } letter && Notation.Letters.TryRead(letter, out var place) ? (Notation.Letters, place)
            : (read.NumberIsRoman ? Notation.Roman : Notation.Arabic, read.Number);

        return kind is not null && Plain(kind, notation, number, read.Of) is { } plain
            ? SoughtNumber.From(plain)
            : new SoughtNumber(kind?.Word ?? read.Series!, kind, number is null || (notation == Notation.Arabic && read.Of is null) ? null : notation, number, read.Of);
    }

    private static PencilledNumber? Plain(NumberingKind kind, Notation notation, int? number, int? of) =>
        number is null ? of is null ? new PencilledNumber(kind, Notation.None) : null
        : number >= 1 && number <= (of ?? number) && (of ?? number) <= notation.Largest ? new PencilledNumber(kind, notation, number, of)
        : null;

    /// <summary>What of a statement counts here; where it stood in the text does not.</summary>
    private sealed record Said(StatementKind Kind, string? Series, int? Number, int? Size, bool IsRoman, string? Letter, int? State)
    {
        public static Said Of(EditionStatement read) => new(read.Kind, read.Series, read.Number, read.Of, read.NumberIsRoman, read.Letter, read.State);
    }
}
