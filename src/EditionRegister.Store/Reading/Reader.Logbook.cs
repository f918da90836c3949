using System.Text;
using EditionRegister.Domain.Documents;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>One entry of the logbook as a person looks at it.</summary>
public sealed record LogbookLine(long N, string At, string Root, long? Batch, string Deed, string Body, LogbookHead Head);

public sealed partial class Reader
{
    private const string LineSql = "SELECT n, at, root, batch, deed, body, head FROM logbook";

    /// <summary>The logbook as it stands: its last entry and head.</summary>
    public LogbookHead Head => Rows("SELECT n, head FROM logbook ORDER BY n DESC LIMIT 1", [], row => HeadOf(row, 0, 1)).FirstOrDefault() ?? LogbookHead.None;

    /// <summary>The head after entry <paramref name="n"/>, as a document issued by that entry prints it.</summary>
    public LogbookHead HeadAt(long n) => Rows("SELECT n, head FROM logbook WHERE n = @1", [n], row => HeadOf(row, 0, 1)).FirstOrDefault() ?? LogbookHead.None;

    /// <summary>Entries that touched one thing, newest first.</summary>
    public IReadOnlyList<LogbookLine> EntriesOf(string root) => Rows(LineSql + " WHERE root = @1 ORDER BY n DESC", [root], LineOf);

    public IReadOnlyList<LogbookLine> NewestEntries(int count) => Rows(LineSql + " ORDER BY n DESC LIMIT @1", [count], LineOf);

    public LogbookLine? Entry(long n) => Rows(LineSql + " WHERE n = @1", [n], LineOf).FirstOrDefault();

    private static LogbookHead HeadOf(SqliteDataReader row, int n, int head) =>
        new(row.Figure(n), Convert.ToHexStringLower(row.BytesOrNone(head)));

    private static LogbookLine LineOf(SqliteDataReader row) => new(
        row.Figure(0), row.Word(1), row.Word(2), row.NumberOrNull(3), row.Word(4), Encoding.UTF8.GetString(row.BytesOrNone(5)), HeadOf(row, 0, 6));
}
