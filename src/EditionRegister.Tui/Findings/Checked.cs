using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;

namespace EditionRegister.Tui.Findings;

/// <summary>What a check came to: the findings to list, the gravest first and work by work, and how many there are of each kind.</summary>
internal sealed record Checked
{
    /// <summary>So many of each severity are listed; a broken file may have a finding for each of its rows.</summary>
    public const int MostOfEach = 5_000;

    /// <summary>Those that were not accepted.</summary>
    public required IReadOnlyList<Finding> Open { get; init; }

    public required IReadOnlyList<Finding> Accepted { get; init; }

    public required long Contradictions { get; init; }

    public required long Queries { get; init; }

    public required long Notes { get; init; }

    /// <summary>Findings of the file itself, which no edit mends.</summary>
    public required long OfTheFile { get; init; }

    /// <summary>The logbook as it was checked; null where it cannot be read.</summary>
    public required LogbookHead? Head { get; init; }

    public bool IsShortened => Contradictions + Queries + Notes > Open.Count;

    /// <summary>The same, with one finding accepted by an entry that changed nothing else.</summary>
    public Checked WithAccepted(Finding finding, Acceptance acceptance, LogbookHead head) => Counting(finding.Severity, -1) with
    {
        Open = [.. Open.Where(one => one.Handle != finding.Handle)],
        Accepted = InOrder([.. Accepted, finding with { Accepted = acceptance }]),
        Head = head,
    };

    /// <summary>The same, with an acceptance taken back by an entry that changed nothing else.</summary>
    public Checked WithTakenBack(Finding finding, LogbookHead head) => Counting(finding.Severity, 1) with
    {
        Open = InOrder([.. Open, finding with { Accepted = null }]),
        Accepted = [.. Accepted.Where(one => one.Handle != finding.Handle)],
        Head = head,
    };

    public static IReadOnlyList<Finding> InOrder(IEnumerable<Finding> findings) => [.. findings.OrderByDescending(finding => finding.Severity)];

    private Checked Counting(Severity severity, int more) => severity switch
    {
        Severity.Contradiction => this with { Contradictions = Contradictions + more },
        Severity.Query => this with { Queries = Queries + more },
        _ => this with { Notes = Notes + more },
    };
}
