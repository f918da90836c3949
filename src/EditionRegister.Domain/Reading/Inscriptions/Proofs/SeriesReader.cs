using System.Runtime.CompilerServices;
using EditionRegister.Domain.Reading.Text;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>Finds kinds of proof in a text: a register's own, those of the trade in words, and their marks.</summary>
internal sealed class SeriesReader
{
    // Many texts are read with one register's words.
    private static readonly ConditionalWeakTable<OwnWords, SeriesReader> Made = [];

    private readonly OwnSeries? _own;

    private SeriesReader(OwnSeries? own) => _own = own;

    public static SeriesReader OfTheTrade { get; } = new(null);

    public static SeriesReader With(OwnWords? own) => own is { Kinds.Count: > 0 } ? Made.GetValue(own, words => new SeriesReader(new OwnSeries(words))) : OfTheTrade;

    /// <summary>Marks of a register's own may begin with any word or sign.</summary>
    public bool HasOwn => _own is not null;

    /// <summary>The kind of proof that begins at a token, or null.</summary>
    public SeriesMet? At(TokenText text, int at) =>
        at < 0 || at >= text.Count ? null : _own?.At(text, at) ?? (text.IsWord(at) ? ProofPhrases.At(text, at) ?? Initials.At(text, at) : null);
}
