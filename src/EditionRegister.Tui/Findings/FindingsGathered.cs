using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;

namespace EditionRegister.Tui.Findings;

/// <summary>Gathers findings as a check comes upon them: all are counted, and as many kept as can be listed.</summary>
internal sealed class FindingsGathered
{
    private readonly List<Finding> _open = [];
    private readonly List<Finding> _accepted = [];
    private readonly Dictionary<Severity, long> _counts = [];
    private long _ofTheFile;

    public void Add(Finding finding)
    {
        if (finding.Accepted is not null)
        {
            _accepted.Add(finding);
            return;
        }

        var count = _counts.GetValueOrDefault(finding.Severity) + 1;
        _counts[finding.Severity] = count;
        _ofTheFile += finding.Handle is null ? 1 : 0;

        if (count <= Checked.MostOfEach)
        {
            _open.Add(finding);
        }
    }

    public Checked Done(LogbookHead? head) => new()
    {
        Open = Checked.InOrder(_open),
        Accepted = Checked.InOrder(_accepted),
        Contradictions = _counts.GetValueOrDefault(Severity.Contradiction),
        Queries = _counts.GetValueOrDefault(Severity.Query),
        Notes = _counts.GetValueOrDefault(Severity.Note),
        OfTheFile = _ofTheFile,
        Head = head,
    };
}
