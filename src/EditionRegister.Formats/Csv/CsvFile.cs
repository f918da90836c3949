using CsvHelper;
using EditionRegister.Domain;

namespace EditionRegister.Formats.Csv;

/// <summary>Reads what spreadsheets save as CSV without guessing, and writes the machine form: RFC 4180, UTF-8, comma, CRLF.</summary>
public static class CsvFile
{
    /// <exception cref="RefusedException">The file is not such a CSV; the sentence names file and line, and nothing is returned of it.</exception>
    public static CsvTable Read(byte[] content, string fileName)
    {
        ArgumentNullException.ThrowIfNull(content);

        var text = CsvBytes.CheckedText(content, fileName);
        var delimiter = CsvDelimiter.Of(text.Span);
        CsvMalformedRecord? malformed = null;

        using var reader = CsvReader.Create(text, Options(delimiter, bad => malformed ??= bad));
        var records = Records(reader, () => malformed is null).ToList();

        if (malformed is { } bad)
        {
            throw CsvRefusals.Malformed(fileName, bad);
        }

        return records.Count == 0 ? throw CsvRefusals.Empty(fileName) : Table(delimiter, records, fileName);
    }

    /// <summary>Leaves the stream open. Fields are quoted only where RFC 4180 asks for it; null is written as an empty field.</summary>
    /// <exception cref="ArgumentException">A row has another number of fields than the header, or text that is not valid Unicode.</exception>
    public static void Write(Stream stream, IReadOnlyList<string> headers, IEnumerable<IReadOnlyList<string?>> rows)
    {
        ArgumentNullException.ThrowIfNull(headers);
        ArgumentNullException.ThrowIfNull(rows);

        using var writer = CsvWriter.Create(stream, new CsvWriterOptions(), leaveOpen: true);
        WriteRecord(writer, headers, headers.Count);

        foreach (var row in rows)
        {
            WriteRecord(writer, row, headers.Count);
        }
    }

    // The header is read as a record like any other, so that its line and its quotes are checked in the same way.
    private static CsvReaderOptions Options(char delimiter, Action<CsvMalformedRecord> onMalformed) => new()
    {
        Separator = delimiter,
        HasHeader = false,
        TrackLineNumbers = true,
        DetectSeparatorHint = false,
        OnMalformedRecord = onMalformed,
    };

    private static IEnumerable<CsvRow> Records(CsvReader reader, Func<bool> goOn)
    {
        while (reader.Read() && goOn())
        {
            yield return new CsvRow(
                (int)reader.LineNumber,
                [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]);
        }
    }

    private static CsvTable Table(char delimiter, List<CsvRow> records, string fileName)
    {
        var (header, rows) = (records[0], records[1..]);
        CsvHeader.Check(header, fileName);

        var ragged = rows.Where(row => row.Fields.Count != header.Fields.Count).ToList();

        return ragged.Count > 0
            ? throw CsvRefusals.Ragged(fileName, header.Fields.Count, ragged)
            : new CsvTable(delimiter, header.Fields, rows);
    }

    private static void WriteRecord(CsvWriter writer, IReadOnlyList<string?> fields, int count)
    {
        if (fields.Count != count)
        {
            throw new ArgumentException($"A row has {fields.Count} fields and the header {count}.", nameof(fields));
        }

        foreach (var field in fields)
        {
            // CsvWriter would put U+FFFD for half a surrogate pair without a word.
            if (field is not null && !Unicode.IsWellFormed(field))
            {
                throw new ArgumentException("A field holds half of a surrogate pair, which UTF-8 cannot say.", nameof(fields));
            }

            writer.WriteField(field);
        }

        writer.EndRecord();
    }
}
