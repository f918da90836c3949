using EditionRegister.Domain.Integrity;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Checking;

/// <summary>Checks the whole register: the file, the logbook, and every work with every rule. Changes nothing.</summary>
public sealed class CheckRegister(RegisterStore store)
{
    /// <summary>Everything found, one at a time, to the end.</summary>
    public IEnumerable<Finding> Run() => store.Check(reader => reader.Works().SelectMany(work => Rules.All.SelectMany(rule => rule.Check(work))));
}
