using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Lists;

/// <summary>Sheets by a date: of their work, of the run they were printed in, or of the declaring of their edition.</summary>
internal static class DatedSheets
{
    public static IEnumerable<string> Selects(SqlPieces sql, SoughtDates dates, Reader reader)
    {
        yield return $"SELECT id FROM impression WHERE run IN (SELECT r.id FROM work w JOIN print_run r ON r.work = w.id WHERE {Meets(sql, dates, "w.year")} OR w.id IN {sql.Ids(Unread(dates, "work", "year", reader))})";
        yield return $"SELECT id FROM impression WHERE run IN (SELECT r.id FROM print_run r WHERE {Meets(sql, dates, "r.printed")} OR r.id IN {sql.Ids(Unread(dates, "print_run", "printed", reader))})";
        yield return $"SELECT id FROM impression WHERE numbering IN (SELECT m.id FROM edition e JOIN numbering m ON m.edition = e.id WHERE {Meets(sql, dates, "e.declared")} OR e.id IN {sql.Ids(Unread(dates, "edition", "declared", reader))})";
    }

    /// <summary>Days are kept so that they sort as texts.</summary>
    private static string Meets(SqlPieces sql, SoughtDates dates, string column) =>
        $"(coalesce({column}_earliest, {column}_latest) IS NOT NULL"
        + (dates.Latest is { } latest ? $" AND coalesce({column}_earliest, '') <= {sql.Value(Iso(latest))}" : "")
        + (dates.Earliest is { } earliest ? $" AND coalesce({column}_latest, '9999-12-31') >= {sql.Value(Iso(earliest))}" : "")
        + ")";

    /// <summary>Rows whose date was recorded before dates in words were read: read now.</summary>
    private static List<long> Unread(SoughtDates dates, string table, string column, Reader reader)
    {
        List<long> found = [];
        using var command = reader.Connection.Command($"SELECT id, {column} FROM {table} WHERE {column} IS NOT NULL AND {column}_earliest IS NULL AND {column}_latest IS NULL");
        using var row = command.ExecuteReader();

        while (row.Read())
        {
            if (dates.Meets(RecordedDate.Read(row.GetString(1))))
            {
                found.Add(row.GetInt64(0));
            }
        }

        return found;
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
