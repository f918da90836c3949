using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Chains;

/// <summary>Dates of a chain against each other and against the printing: only a sure conflict is refused.</summary>
internal static class ChainDates
{
    /// <exception cref="RefusedException">before-printed or before-last-link.</exception>
    public static void RunForwards(Work work, Impression sheet, RecordedDate date, IEnumerable<(string Kind, RecordedDate Date)> links)
    {
        if (work.RunOf(sheet)?.Printed is { } printed && date.SurelyBefore(printed))
        {
            throw ChainRefusals.BeforePrinted(sheet, date, printed);
        }

        foreach (var (kind, last) in links.Reverse())
        {
            if (date.SurelyBefore(last))
            {
                throw ChainRefusals.BeforeLastLink(sheet, date, MoveKind.Of(kind)?.Name ?? kind, last);
            }
        }
    }
}
