using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Lists;

/// <summary>Sheets by their number: as it was given, as it is pencilled, as an inscription says it.</summary>
internal static class NumberedSheets
{
    public static IEnumerable<string> Selects(SqlPieces sql, SoughtNumber number, Reader reader)
    {
        foreach (var reading in number.Readings)
        {
            yield return Given(sql, reading, reader);

            if (reader.Form >= 4)
            {
                yield return Said(sql, reading, "SELECT id FROM impression", "pencil");
                yield return Said(sql, reading, "SELECT impression FROM inscription", "says");
            }
        }

        yield return $"SELECT value FROM {sql.Ids(Unread(number, reader))}";
    }

    private static string Given(SqlPieces sql, SoughtNumber number, Reader reader)
    {
        var of = number.Of is { } size ? $" AND coalesce(m.size, {reader.In(4, "m.hedged_size")}) = {sql.Value((long)size)}" : "";

        return $"SELECT i.id FROM numbering m JOIN impression i ON i.numbering = m.id WHERE m.kind = {sql.Value(number.Series)} AND i.number IS NOT NULL{Written(sql, number, "i.number", "nullif(m.notation, 'none')")}{of}";
    }

    private static string Said(SqlPieces sql, SoughtNumber number, string select, string what)
    {
        var of = number.Of is { } size ? $" AND {what}_size = {sql.Value((long)size)}" : "";

        return $"{select} WHERE {what}_kind IN ('numbered', 'proof') AND {what}_series IN {sql.Words(ProofSeries.NamesOf(number))}{Written(sql, number, $"{what}_number", $"{what}_notation")}{of}";
    }

    private static string Written(SqlPieces sql, SoughtNumber number, string column, string notation) =>
        (number.Number is { } figure ? $" AND {column} = {sql.Value((long)figure)}" : "")
        + (number.Notation is { } written ? $" AND coalesce({notation}, {sql.Value(written.Word)}) = {sql.Value(written.Word)}" : "");

    /// <summary>What is pencilled on sheets that were recorded before pencils were read; only what holds the numeral is read now.</summary>
    private static List<long> Unread(SoughtNumber number, Reader reader)
    {
        List<long> found = [];
        var (unread, holding) = (reader.Form >= 4 ? "i.pencil_kind IS NULL AND " : "", Holding(number));
        using var command = reader.Connection.Command(
            $"SELECT i.id, i.pencilled, m.notation FROM impression i LEFT JOIN numbering m ON m.id = i.numbering WHERE {unread}i.pencilled IS NOT NULL AND ({holding})");
        using var row = command.ExecuteReader();

        while (row.Read())
        {
            var expected = Notation.TryFind(row.TextOrNull(2), out var notation) ? notation : null;

            if (NumbersThere.OnPencil(null, row.GetString(1), expected, reader.OwnWords) is { } there && number.Fits(there))
            {
                found.Add(row.GetInt64(0));
            }
        }

        return found;
    }

    // Numerals are figures and letters, so nothing in them needs to be quoted.
    private static string Holding(SoughtNumber number) => string.Join(" OR ", number.Readings.Select(reading =>
        reading.Number is not { } figure ? "i.pencilled GLOB '*[A-Za-z]*'"
        : string.Join(" OR ", Notations(reading.Notation).Where(notation => figure >= 1 && figure <= notation.Largest).Select(notation => $"i.pencilled LIKE '%{notation.Write(figure)}%'").DefaultIfEmpty("0"))));

    private static IEnumerable<Notation> Notations(Notation? notation) => notation is null ? Notation.All.Where(one => one != Notation.None) : [notation];
}
