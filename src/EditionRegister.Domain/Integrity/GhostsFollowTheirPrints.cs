using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A ghost was pulled after its print.</summary>
public sealed class GhostsFollowTheirPrints : IRule
{
    public string Name => nameof(GhostsFollowTheirPrints);

    public string Sentence => "A ghost was pulled after the print it is the ghost of.";

    public string Basis => "common practice, no source: a ghost takes up what the first sheet left on the plate";

    public IEnumerable<Finding> Check(Work work) =>
        from sheet in work.Impressions
        let link = Ghosts.Of(sheet)
        where link is not null
        let print = work.Impressions.FirstOrDefault(other => other.Id == link.Other)
        where print is not null
        let pulled = link.Made.IsKnown ? link.Made : Printed(work, sheet)
        where pulled.SurelyBefore(Printed(work, print))
        select this.Query(
            work.SubjectOf(sheet),
            $"{sheet.ShownCode} is the ghost of {print.ShownCode} of {work.Called}, and was pulled {pulled}, before its print ({Printed(work, print)}).",
            "Correct the date that was mistyped, or record the two the other way round.");

    private static RecordedDate Printed(Work work, Impression sheet) => work.RunOf(sheet)?.Printed ?? RecordedDate.None;
}
