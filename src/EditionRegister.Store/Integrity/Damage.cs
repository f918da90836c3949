using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Integrity;

/// <summary>Turns what a damaged file makes a reader throw into a finding.</summary>
internal static class Damage
{
    /// <summary>The findings as they come; where reading breaks off, one more that says so.</summary>
    /// <param name="what">What is being read.</param>
    /// <param name="path">The file it is read from.</param>
    /// <param name="findings">Reads and finds.</param>
    /// <param name="onlyByTheDatabase">Lets everything pass but what SQLite itself reports.</param>
    public static IEnumerable<Finding> Told(string what, string path, Func<IEnumerable<Finding>> findings, bool onlyByTheDatabase = false)
    {
        using var each = Lazily(findings).GetEnumerator();

        for (var next = Next(each, what, path, onlyByTheDatabase); next.Finding is { } finding; next = Next(each, what, path, onlyByTheDatabase))
        {
            yield return finding;

            if (next.BrokeOff)
            {
                yield break;
            }
        }
    }

    private static (Finding? Finding, bool BrokeOff) Next(IEnumerator<Finding> each, string what, string path, bool onlyByTheDatabase)
    {
        try
        {
            return (each.MoveNext() ? each.Current : null, false);
        }
        catch (Exception damage) when (IsReported(damage) || (!onlyByTheDatabase && IsMisread(damage)))
        {
            var finding = FileRule.FileIsSound.Broken(new Subject("file", 1, "the file"), $"Reading {what} broke off: {damage.Message.TrimEnd('.')}.");

            return (finding, true);
        }
        catch (SqliteException failure) when (SqliteFailures.Explain(failure, path) is Domain.RefusedException refusal)
        {
            throw refusal;
        }
    }

    /// <summary>A malformed page; not a busy or vanished file.</summary>
    private static bool IsReported(Exception thrown) => thrown is SqliteException { SqliteErrorCode: 11 or 26 };

    /// <summary>A table or column that is not there, or a value of a kind its column cannot hold.</summary>
    private static bool IsMisread(Exception thrown) =>
        thrown is SqliteException { SqliteErrorCode: 1 or 18 or 20 }
            or InvalidCastException or InvalidOperationException or OverflowException or FormatException or ArgumentException;

    private static IEnumerable<Finding> Lazily(Func<IEnumerable<Finding>> findings)
    {
        foreach (var finding in findings())
        {
            yield return finding;
        }
    }
}
