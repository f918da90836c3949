using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>Numbers that a search may meet: places of a numbering one after the other, or the one a sheet says it has.</summary>
/// <param name="Series">The word of the kind of numbering, or the words of a proof that no numbering is kept of.</param>
/// <param name="Notation">Null where there is no numeral, or nobody knows.</param>
/// <param name="Size">Null where none is stated.</param>
/// <param name="From">The first; 0 with <paramref name="To"/> where a mark stands alone.</param>
/// <param name="To">The last.</param>
public readonly record struct NumbersThere(string Series, Notation? Notation, int? Size, int From, int To)
{
    public static NumbersThere In(Numbering numbering, int from, int to)
    {
        ArgumentNullException.ThrowIfNull(numbering);

        return new(numbering.KindWord, numbering.Notation == Notation.None ? null : numbering.Notation, numbering.Size ?? numbering.HedgedSize, from, to);
    }

    /// <summary>What a pencil says: as it was read when it was recorded, else as it can be read plainly now; null where it says no number.</summary>
    /// <param name="says">What was read when it was recorded, or null.</param>
    /// <param name="pencilled">As written.</param>
    /// <param name="expected">The notation of the numbering the sheet belongs to.</param>
    /// <param name="own">Kinds that the register made for itself.</param>
    public static NumbersThere? OnPencil(SaidOfNumber? says, string? pencilled, Notation? expected, OwnWords own) =>
        says is not null ? Said(says)
        : !string.IsNullOrWhiteSpace(pencilled) && PencilledNumber.TryParse(pencilled, expected, own, out var read, out _) ? Of(read)
        : null;

    /// <summary>What a pencil or an inscription was read as; null where it says no number and no proof.</summary>
    public static NumbersThere? Said(SaidOfNumber? says) =>
        says is { Kind: "numbered" or "proof", Series: { } series }
            ? new(ProofSeries.WordOf(series), Notation.TryFind(says.Notation, out var notation) ? notation : null, says.Size, says.Number ?? 0, says.Number ?? 0)
            : null;

    private static NumbersThere Of(PencilledNumber read) =>
        new(read.Kind.Word, read.Notation == Notation.None ? null : read.Notation, read.Of, read.Number ?? 0, read.Number ?? 0);
}
