using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>What may begin with a word, or what a word names.</summary>
[Flags]
internal enum Opening : ushort
{
    None = 0,

    /// <summary>A number in words: twelve, twelfth.</summary>
    Number = 1,

    /// <summary>The word for a number: no., numbered, Nr.</summary>
    NumberWord = 2,

    /// <summary>The word for an edition.</summary>
    Edition = 4,

    /// <summary>The word for one of an edition: copy, impression, exemplaire.</summary>
    Copy = 8,

    /// <summary>Unnumbered, open, unique.</summary>
    Unnumbered = 16,

    /// <summary>A state, or a word that may stand before one.</summary>
    State = 32,

    /// <summary>The words for a kind of proof.</summary>
    Proof = 64,

    /// <summary>Proof alone, trial alone, imp.</summary>
    Faint = 128,
}

/// <summary>The words that something read here may begin with, in one table: most words of most texts are none of them, and need no further look.</summary>
internal static class Vocabulary
{
    private static readonly FrozenDictionary<string, Opening>.AlternateLookup<ReadOnlySpan<char>> Words = Table(
        (Opening.Edition, "edition ed edn edit editions tirage tire tires tiree tirees tiratura tirato tirada tiraje auflage aufl edizione edicion"),
        (Opening.NumberWord, "number numbered no nr num numero nummer nummeriert numeriert numerote numerotee numerotes numerotees numerato numerati numerado numerados nº nro nos"),
        (Opening.Copy, "copy print impression cast casting set portfolio exemplaire exemplar esemplare copia ejemplar epreuve abzug druck"),
        (Opening.Unnumbered, "uneditioned unlimited unlimitiert unnumbered unnummeriert unnumeriert open offene non nicht not unique"),
        (Opening.State, "state etat stato estado zustand zustandes staat only unique einziger seul unico final last dernier ultimo letzter later early earlier late intermediate finished unfinished undescribed"),
        (Opening.Faint, "proof proofs epreuve epreuves prova prueba pruebas trial imp"),
        (Opening.Number, string.Join(' ', NumberWords.All)),
        (Opening.Proof, string.Join(' ', ProofPhrases.FirstWords)));

    /// <param name="word">In small letters, without accents.</param>
    public static Opening Of(ReadOnlySpan<char> word) => Words.TryGetValue(word, out var opening) ? opening : Opening.None;

    private static FrozenDictionary<string, Opening>.AlternateLookup<ReadOnlySpan<char>> Table(params (Opening Opening, string Words)[] lines) =>
        lines.SelectMany(line => line.Words.Split(' ').Distinct().Select(word => (word, line.Opening)))
            .GroupBy(one => one.word, StringComparer.Ordinal)
            .ToFrozenDictionary(same => same.Key, same => same.Aggregate(Opening.None, (all, one) => all | one.Opening), StringComparer.Ordinal)
            .GetAlternateLookup<ReadOnlySpan<char>>();
}
