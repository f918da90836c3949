using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>Which edition of its matrix one is: the first, a later one, a restrike or a posthumous one. A fact and no fault, and always disclosed.</summary>
public static class RankText
{
    /// <summary>In words, alone; null where nobody said.</summary>
    public static string? Of(Edition edition)
    {
        ArgumentNullException.ThrowIfNull(edition);

        return edition.Rank switch
        {
            "first" => "first edition",
            "later" => "later edition",
            "restrike" => "restrike",
            "posthumous" => "posthumous edition",
            _ => null,
        };
    }

    /// <summary>The same with what came before it: restrike; before it edition 1, 30 impressions.</summary>
    public static string? WithThoseBefore(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);

        return Of(edition) is not { } rank ? null
            : edition.Rank == "first" || Before(work, edition) is not { Count: > 0 } before ? rank
            : $"{rank}; before it {InWords.List(before)}";
    }

    private static List<string> Before(Work work, Edition edition) =>
        [.. work.Editions.Where(other => other.Ordinal < edition.Ordinal).OrderBy(other => other.Ordinal).Select(other => $"edition {InWords.Figure(other.Ordinal)}, {HowMany(other)}")];

    private static string HowMany(Edition edition) =>
        edition.Size is { } size ? InWords.Count(size, "impression", "impressions") : edition.Kind == "open" ? "not limited in number" : $"of how many impressions is {CertificateFacts.NotKnown}";
}
