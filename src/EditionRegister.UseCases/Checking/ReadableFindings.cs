using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Integrity;

namespace EditionRegister.UseCases.Checking;

/// <summary>Findings as long as the file can be read at all; where it cannot, that is the last finding, so that a check always comes to its last line.</summary>
public static class ReadableFindings
{
    /// <summary>The rule that what cannot be read at all is found by.</summary>
    public static string Rule => FileRule.FileIsSound.Name;

    /// <summary>Everything a check finds; what kept it from going on is the last of it.</summary>
    public static IEnumerable<Finding> Of(CheckRegister check, Action<long, long>? progress = null, bool hashPictures = false)
    {
        using var findings = check.Run(progress, hashPictures).GetEnumerator();

        while (Next(findings) is { } finding)
        {
            yield return finding;
        }
    }

    /// <summary>The logbook as it stood when it was checked, or null where it cannot be read.</summary>
    public static LogbookHead? Head(Register register, CheckRegister check)
    {
        try
        {
            return check.Head ?? register.LookAround.Head();
        }
        catch (RefusedException)
        {
            return null;
        }
    }

    // An enumerator that has thrown ends when it is asked again.
    private static Finding? Next(IEnumerator<Finding> findings)
    {
        try
        {
            return findings.MoveNext() ? findings.Current : null;
        }
        catch (RefusedException refusal)
        {
            return new Finding(Rule, Severity.Contradiction, new Subject("file", 1, "the file"), refusal.Message, FileRule.FileIsSound.Basis, FileRule.FileIsSound.Remedy);
        }
    }
}
