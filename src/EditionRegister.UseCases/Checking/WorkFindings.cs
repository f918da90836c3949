using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Checking;

/// <summary>A finding, and the work it was found in.</summary>
internal sealed record WorkFinding(Work Work, Finding Finding);

/// <summary>What the rules find in every work, each finding with its handle and with the acceptance that holds for it.</summary>
internal static class WorkFindings
{
    public static IEnumerable<WorkFinding> Of(Reader reader, Action<long, long>? progress = null)
    {
        var acceptances = reader.Acceptances();
        FindingHandles handles = new();
        var (done, all) = (0L, progress is null ? 0 : reader.WorkIds().Count);

        foreach (var work in reader.Works())
        {
            progress?.Invoke(done++, all);

            foreach (var finding in Rules.All.SelectMany(rule => rule.Check(work)))
            {
                var words = FindingHandles.WordsOf(finding);

                yield return new WorkFinding(work, finding with { Handle = handles.Give(words), Accepted = acceptances.GetValueOrDefault(words) });
            }
        }
    }

    /// <summary>The finding that is called so, case ignored.</summary>
    /// <exception cref="Domain.RefusedException">finding-not-found, or finding-of-the-file for what no acceptance makes sound.</exception>
    public static WorkFinding Named(Reader reader, string handle)
    {
        var wanted = handle.Trim();
        var file = Store.Integrity.FileRule.All.FirstOrDefault(rule => string.Equals(rule.Name, wanted, StringComparison.OrdinalIgnoreCase));

        if (file is not null)
        {
            throw AcceptanceRefusals.OfTheFile(file.Name);
        }

        foreach (var found in Of(reader))
        {
            if (string.Equals(found.Finding.Handle, wanted, StringComparison.OrdinalIgnoreCase))
            {
                return found;
            }
        }

        throw AcceptanceRefusals.NotFound(wanted);
    }
}
