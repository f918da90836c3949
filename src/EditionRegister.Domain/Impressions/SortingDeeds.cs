using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Sorting the dry pulls: kept, spare, or left out for a fault.</summary>
public static class SortingDeeds
{
    public static IReadOnlyList<string> Standings { get; } = ["kept", "spare", "left-out", "held-out", "pulled"];

    /// <exception cref="RefusedException">sheet-is-numbered, fault-missing or fault-unknown.</exception>
    public static void Sort(Work work, IReadOnlyList<Impression> sheets, string standing, string? fault, string? note, Deed deed)
    {
        if (standing == "left-out" && string.IsNullOrEmpty(fault))
        {
            throw ImpressionRefusals.NoFault();
        }

        if (fault is not null && work.OwnWords.FaultOf(fault) is null)
        {
            throw ImpressionRefusals.UnknownFault(fault, work.OwnWords);
        }

        foreach (var sheet in sheets)
        {
            if (sheet.Number is not null && sheet.Standing != standing)
            {
                throw ImpressionRefusals.Numbered(work, sheet);
            }

            deed.Set("impression", sheet.Id, ("standing", standing), ("fault", fault), ("fault_note", note));
        }
    }
}
