using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Tui.PlanChest;

/// <summary>The sheets beside one: by number within its edition, or by place in the pile where it has no number.</summary>
internal static class ImpressionNeighbours
{
    /// <summary>The codes of the sheet before and the one after; null at the ends.</summary>
    public static (string? Before, string? After) Of(Work work, Impression sheet)
    {
        List<Impression> beside = work.EditionOf(sheet) is { } edition
            ? [.. work.Impressions.Where(other => edition.Find(other.Numbering) is not null).OrderBy(other => edition.Find(other.Numbering)!.Ordinal).ThenBy(other => other.Number).ThenBy(other => other.Ordinal)]
            : [.. work.Impressions.Where(other => other.Run == sheet.Run && work.EditionOf(other) is null).OrderBy(other => other.Ordinal)];
        var at = beside.FindIndex(other => other.Id == sheet.Id);

        return (at > 0 ? beside[at - 1].ShownCode : null, at >= 0 && at < beside.Count - 1 ? beside[at + 1].ShownCode : null);
    }
}
