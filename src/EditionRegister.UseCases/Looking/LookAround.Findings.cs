using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Looking;

public sealed partial class LookAround
{
    /// <summary>What the rules find in one work as it was read, each with the acceptance that holds for it; without handles, which only a check of all works gives.</summary>
    public IReadOnlyList<Finding> FindingsIn(Work work) => store.Read(reader =>
    {
        var found = Rules.All.SelectMany(rule => rule.Check(work)).ToList();
        var acceptances = found.Count == 0 ? null : reader.Acceptances();

        return found.ConvertAll(finding => finding with { Accepted = acceptances?.GetValueOrDefault(FindingHandles.WordsOf(finding)) });
    });
}
