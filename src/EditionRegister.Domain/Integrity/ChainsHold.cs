using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Where a sheet is and whose it is are two chains without a break.</summary>
public sealed class ChainsHold : IRule
{
    private const string Remedy = "Put the chain right with a correcting entry, from the link that is wrong onwards.";

    public string Name => nameof(ChainsHold);

    public string Sentence =>
        "Whereabouts and ownership begin with a first link and go on without a gap, each from where the one before ended, never surely back in time, and not after the sheet is gone; what is missing is found before it goes anywhere, and only a consignee passes on.";

    public string Basis => "common practice, no source: a provenance is a chain in which each owner received the sheet from the one before";

    public IEnumerable<Finding> Check(Work work) => work.Impressions.SelectMany(sheet => Check(work, sheet));

    private IEnumerable<Finding> Check(Work work, Impression sheet)
    {
        var whereabouts = ChainStep.Of(sheet.Whereabouts);
        var ownership = ChainStep.Of(sheet.Ownership);

        return Links(work, sheet, whereabouts, "whereabouts")
            .Concat(Links(work, sheet, ownership, "ownership"))
            .Concat(BeforePrinting(work, sheet, [.. whereabouts, .. ownership]))
            .Concat(AfterGone(work, sheet))
            .Concat(WentMissing(work, sheet))
            .Concat(PassedOnByNobody(work, sheet))
            .Concat(SoldToItsOwner(work, sheet))
            .Concat(ChainEnds.Of(work, sheet).Select(end => $"{work.CalledSheet(sheet)} {end}."))
            .Select(message => this.Contradiction(work.SubjectOf(sheet), message, Remedy));
    }

    private static IEnumerable<string> Links(Work work, Impression sheet, List<ChainStep> steps, string chain)
    {
        if (steps.Count == 0 || steps[0].From is not null)
        {
            yield return $"{work.CalledSheet(sheet)} has no first link in its {chain}.";
        }

        if (steps.Where((step, at) => step.Ordinal != at + 1).FirstOrDefault() is { } gap)
        {
            yield return $"In the {chain} of {Sheet(work, sheet)} the links are not numbered from one without a gap: link {InWords.Figure(steps.IndexOf(gap) + 1L)} is numbered {InWords.Figure(gap.Ordinal)}.";
        }

        for (var at = 1; at < steps.Count; at++)
        {
            if (!Equals(steps[at].From, steps[at - 1].To))
            {
                yield return Break(work, sheet, steps[at - 1], steps[at]);
            }
        }

        foreach (var sentence in BackInTime(work, sheet, steps))
        {
            yield return sentence;
        }
    }

    private static string Break(Work work, Impression sheet, ChainStep before, ChainStep step)
    {
        var (from, was) = (ChainStep.Words(step.From, work.Book), ChainStep.Words(before.To, work.Book));

        return step.To is Owner
            ? $"{work.CalledSheet(sheet)} was {step.What} by {from}, but belonged to {was}{Namesake(from, was)}."
            : $"{work.CalledSheet(sheet)} was {step.What} from {from}, but was at {was}{Namesake(from, was)}.";
    }

    private static string Namesake(string from, string was) => from == was ? " (another of that name)" : "";

    /// <summary>Each link against the one before it that surely happened last.</summary>
    private static IEnumerable<string> BackInTime(Work work, Impression sheet, List<ChainStep> steps)
    {
        ChainStep? latest = null;

        foreach (var step in steps)
        {
            if (latest is not null && step.Date.SurelyBefore(latest.Date))
            {
                yield return $"{work.CalledSheet(sheet)} was {step.What} ({step.Date}) before it was {latest.What} ({latest.Date}), though recorded after it.";
            }

            latest = step.Date.Earliest is { } day && (latest is null || day > latest.Date.Earliest) ? step : latest;
        }
    }

    private static IEnumerable<string> BeforePrinting(Work work, Impression sheet, List<ChainStep> steps) =>
        from run in work.Runs
        where run.Id == sheet.Run
        from step in steps
        where step.Date.SurelyBefore(run.Printed)
        select $"{work.CalledSheet(sheet)} was {step.What} ({step.Date}) before it was printed ({run.Printed}).";

    private static IEnumerable<string> AfterGone(Work work, Impression sheet)
    {
        for (var at = 1; at < sheet.Whereabouts.Count; at++)
        {
            var (before, link) = (sheet.Whereabouts[at - 1], sheet.Whereabouts[at]);

            if (before.To.State == "gone" && link.Kind != "found")
            {
                yield return $"{work.CalledSheet(sheet)} was {MoveKind.Of(link.Kind)?.Name ?? link.Kind} after it was gone for good ({MoveKind.Of(before.Kind)?.Name ?? before.Kind}, {before.Moved}).";
            }
        }
    }

    private static IEnumerable<string> WentMissing(Work work, Impression sheet)
    {
        for (var at = 1; at < sheet.Whereabouts.Count; at++)
        {
            var (before, link) = (sheet.Whereabouts[at - 1], sheet.Whereabouts[at]);

            if (MoveKind.Of(before.Kind) is { IsMissing: true } missing && MoveKind.Of(link.Kind) is { IsMissing: false } kind && kind != MoveKind.Found && kind != MoveKind.Destroyed)
            {
                yield return $"{work.CalledSheet(sheet)} was {kind.Name} after it was {missing.Name} ({before.Moved}), and nobody recorded that it was found.";
            }
        }
    }

    private static IEnumerable<string> PassedOnByNobody(Work work, Impression sheet) =>
        from link in sheet.Whereabouts
        where link.Kind == MoveKind.SubConsigned.Word && !sheet.Whereabouts.Any(before => before.Ordinal < link.Ordinal && before.Kind == MoveKind.Consigned.Word)
        select $"{work.CalledSheet(sheet)} was {MoveKind.SubConsigned.Name} to {ChainStep.Words(link.To, work.Book)}, and was in nobody's consignment before.";

    private static IEnumerable<string> SoldToItsOwner(Work work, Impression sheet) =>
        from link in sheet.Ownership
        where link.Kind == "sold" && link.From is { State: "known" } && link.From == link.To
        select $"{work.CalledSheet(sheet)} was sold by {ChainStep.Words(link.From, work.Book)} to the same owner.";

    // In the middle of a sentence.
    private static string Sheet(Work work, Impression sheet) =>
        work.NumberShown(sheet) is null ? $"sheet {sheet.ShownCode} of {work.Called}" : work.CalledSheet(sheet);
}
