using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Impressions;

/// <summary>Grades as somebody saw them before they began to mark: a mark that another gave since is refused with both values.</summary>
/// <param name="sheets">As they were read.</param>
public sealed class GradesAsSeen(IEnumerable<Impression> sheets)
{
    private readonly Dictionary<long, Grade?> _seen = sheets.ToDictionary(sheet => sheet.Id, sheet => sheet.Grade);

    /// <exception cref="Domain.RefusedException">changed-meanwhile.</exception>
    internal void Demand(Impression sheet, GradeGiven grade)
    {
        if (!_seen.TryGetValue(sheet.Id, out var seen) || seen?.V == sheet.Grade?.V)
        {
            return;
        }

        foreach (var (aspect, mark) in grade.Marks)
        {
            if (aspect.MarkOf(sheet.Grade) is var now && now != mark && now != aspect.MarkOf(seen))
            {
                throw ImpressionRefusals.ChangedMeanwhile(sheet, $"the mark for {aspect.Word}", now is { } given ? Wording.Counted.Figure(given) : "none", Wording.Counted.Figure(mark));
            }
        }
    }
}
