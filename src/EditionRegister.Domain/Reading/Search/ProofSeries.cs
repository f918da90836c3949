using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>What readers of inscriptions call a run of numbers (edition, A/P, trial proof) and what the register calls it.</summary>
public static class ProofSeries
{
    private const string Edition = "edition";

    /// <summary>The word of the kind of numbering; the words themselves where no numbering is kept of such proofs.</summary>
    public static string WordOf(string series) => KindOf(series)?.Word ?? series;

    public static NumberingKind? KindOf(string series) =>
        series == Edition ? NumberingKind.Numbered : NumberingKind.All.FirstOrDefault(kind => kind.Mark == series || kind.Name == series);

    /// <summary>Everything that readers may have called it.</summary>
    public static IReadOnlyList<string> NamesOf(SoughtNumber sought)
    {
        ArgumentNullException.ThrowIfNull(sought);

        return sought.Kind is not { } kind ? [sought.Series] : kind == NumberingKind.Numbered ? [Edition] : kind.Mark == kind.Name ? [kind.Mark] : [kind.Mark, kind.Name];
    }
}
