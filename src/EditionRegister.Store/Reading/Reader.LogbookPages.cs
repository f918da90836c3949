using System.Buffers.Text;
using System.Globalization;
using System.Text;
using System.Text.Json;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Reading;

/// <summary>What an entry says of itself, without its facts.</summary>
/// <param name="N">Its number.</param>
/// <param name="At">When it was written, UTC, ISO 8601.</param>
/// <param name="Root">What it is on.</param>
/// <param name="Batch">The batch it belongs to, or null.</param>
/// <param name="Deed">The deed's word.</param>
/// <param name="By">Who wrote it, or null where nobody said.</param>
public sealed record EntryLine(long N, string At, string Root, long? Batch, string Deed, long? By);

public sealed partial class Reader
{
    // The body's canonical form has who wrote it before the deed; longer than this is nothing that stands before it.
    private const string HeadlineSql = "SELECT n, at, root, batch, deed, substr(body, 1, 128) FROM logbook";

    /// <summary>Entries below <paramref name="before"/>, newest first, one at a time.</summary>
    /// <param name="before">Where to begin.</param>
    /// <param name="roots">Only entries on one of these; null is all.</param>
    /// <param name="by">Only entries this person wrote; null is all.</param>
    public IEnumerable<EntryLine> EntriesDown(long before, IReadOnlyCollection<string>? roots = null, long? by = null) => Streamed(
        HeadlineSql + " WHERE n < @1"
            + (roots is null ? "" : " AND root IN (SELECT value FROM json_each(@2))")
            + (by is null ? "" : " AND instr(substr(body, 1, 128), @3) > 0")
            + " ORDER BY n DESC",
        [before, JsonSerializer.Serialize(roots ?? []), Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"\"by\":{by},"))]);

    /// <summary>Entries from <paramref name="from"/> on, one at a time.</summary>
    public IEnumerable<EntryLine> EntriesUp(long from) => Streamed(HeadlineSql + " WHERE n >= @1 ORDER BY n", [from]);

    /// <summary>The first entry written on a day or later, one above the last where there is none. The logbook's order is that of time.</summary>
    public long FirstEntryOn(DateOnly day)
    {
        var wanted = day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var (low, high) = (1L, Head.N + 1);

        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            var at = Rows("SELECT at FROM logbook WHERE n >= @1 ORDER BY n LIMIT 1", [middle], row => row.Word(0)).FirstOrDefault("");
            (low, high) = string.CompareOrdinal(at, wanted) < 0 ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    /// <summary>What a batch was, and the file it was read from.</summary>
    public IReadOnlyDictionary<long, (string Kind, string? File)> Batches() =>
        Rows("SELECT id, kind, file_name FROM batch", [], row => (Id: row.Figure(0), Kind: row.Word(1), File: row.TextOrNull(2))).ToDictionary(batch => batch.Id, batch => (batch.Kind, batch.File));

    // Not prepared once for all: two walks may be under way.
    private IEnumerable<EntryLine> Streamed(string sql, object[] parameters)
    {
        using var command = Connection.Command(sql, parameters);
        using var row = command.ExecuteReader();

        while (row.Read())
        {
            yield return new EntryLine(row.Figure(0), row.Word(1), row.Word(2), row.NumberOrNull(3), row.Word(4), By(row.BytesOrNone(5)));
        }
    }

    private static long? By(ReadOnlySpan<byte> body) =>
        body.IndexOf("\"by\":"u8) is >= 0 and var at && Utf8Parser.TryParse(body[(at + 5)..], out long by, out _) ? by : null;
}
