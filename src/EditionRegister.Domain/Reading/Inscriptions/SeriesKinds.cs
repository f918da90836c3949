using System.Collections.Frozen;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Which kind of numbering of the register a series is that was read in a text.</summary>
public static class SeriesKinds
{
    private static readonly FrozenDictionary<string, NumberingKind> Kinds = new Dictionary<string, NumberingKind>(StringComparer.Ordinal)
    {
        [Series.Edition] = NumberingKind.Numbered,
        [Series.Artists] = NumberingKind.ArtistsProof,
        [Series.Printers] = NumberingKind.PrintersProof,
        [Series.Publishers] = NumberingKind.PublishersProof,
        [Series.HorsCommerce] = NumberingKind.HorsCommerce,
        [Series.BonATirer] = NumberingKind.BonATirer,
        [Series.Trial] = NumberingKind.Trial,
        [Series.ColourTrial] = NumberingKind.ColourTrial,
        [Series.State] = NumberingKind.State,
        [Series.Progressive] = NumberingKind.Progressive,
        [Series.Cancellation] = NumberingKind.Cancellation,
        [Series.Presentation] = NumberingKind.Presentation,
        [Series.Workshop] = NumberingKind.Workshop,
        [Series.Archive] = NumberingKind.Archive,
        [Series.Exchange] = NumberingKind.Exchange,
        [Series.LegalDeposit] = NumberingKind.LegalDeposit,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The register's kind, its own ones first; null where none fits, as for a working proof or a proof of which no more is said.</summary>
    /// <param name="series">As <see cref="EditionStatement.Series"/> has it.</param>
    /// <param name="own">The kinds that a register made for itself.</param>
    public static NumberingKind? KindOf(string? series, OwnWords? own = null) =>
        series is null ? null : own?.Kinds.FirstOrDefault(kind => kind.Mark == series) ?? Kinds.GetValueOrDefault(series);
}
