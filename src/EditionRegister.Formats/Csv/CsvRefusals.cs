using System.Text;
using CsvHelper;
using EditionRegister.Domain;

namespace EditionRegister.Formats.Csv;

/// <summary>Every way in which a CSV file is not read, in words.</summary>
internal static class CsvRefusals
{
    private const int MostNamed = 20;

    public static RefusedException Utf16(string file) => new(
        "csv-utf-16",
        $"{file} was not read: it is UTF-16 text, not UTF-8. Save it again as “CSV UTF-8”.");

    public static RefusedException NotUtf8(string file, int line, byte bad) => new(
        "csv-not-utf-8",
        $"{file} was not read: line {line} holds the byte 0x{bad:X2}, which is not UTF-8. Save it again as “CSV UTF-8”.");

    public static RefusedException Nul(string file, int line) => new(
        "csv-nul",
        $"{file} was not read: line {line} holds a NUL character, so this is not a text file or it is damaged. Save it again as “CSV UTF-8”.");

    public static RefusedException Empty(string file) => new(
        "csv-empty",
        $"{file} was not read: it is empty. Its first line must name the columns.");

    public static RefusedException UnnamedColumn(string file, int line, int column) => new(
        "csv-column-without-name",
        $"{file} was not read: column {column} of the header (line {line}) has no name. Name the column, or delete it in every row.");

    public static RefusedException SameNameTwice(string file, int line, string name) => new(
        "csv-column-twice",
        $"{file} was not read: the header (line {line}) names the column “{name}” twice. Give each column a name of its own.");

    public static RefusedException Ragged(string file, int wanted, List<CsvRow> ragged)
    {
        var named = ragged.Take(MostNamed).Select(row => $"line {row.Line} has {Fields(row.Fields.Count)}, the header has {wanted}");
        var rest = ragged.Count > MostNamed ? $"; and {ragged.Count - MostNamed} more such lines" : "";

        return new(
            "csv-ragged",
            $"{file} was not read: {string.Join("; ", named)}{rest}. Put quotes round every field that holds the delimiter, and give every row all its fields.");
    }

    public static RefusedException Malformed(string file, CsvMalformedRecord bad) => bad.Reason switch
    {
        CsvMalformedReason.UnterminatedQuote => new(
            "csv-open-quote",
            $"{file} was not read: the quote opened on line {OpeningLine(bad)} is never closed. Close it, or write a quote inside a field twice (\"\")."),
        CsvMalformedReason.TextAfterClosingQuote => new(
            "csv-text-after-quote",
            $"{file} was not read: the record on line {bad.LineNumber} has text after a closing quote. Write a quote inside a field twice (\"\")."),
        CsvMalformedReason.StrayQuote => new(
            "csv-stray-quote",
            $"{file} was not read: the record on line {bad.LineNumber} has a quote inside a field that does not start with one. Put the whole field in quotes and write the inner quote twice (\"\")."),
        var other => throw new InvalidOperationException($"CsvHelper reported {other}, which its options do not ask for."),
    };

    private static string Fields(int count) => count == 1 ? "1 field" : $"{count} fields";

    // CsvHelper tells where the record starts, but the open quote may be lines below that. Everything before it is
    // well formed, or another fault would have been reported: quotes open and close in turn, and a pair is one quote.
    private static int OpeningLine(CsvMalformedRecord bad)
    {
        var raw = Encoding.UTF8.GetBytes(bad.RawRecord);
        var (opened, quoted) = (0, false);

        for (var i = 0; i < raw.Length; i++)
        {
            if (raw[i] != '"')
            {
                continue;
            }

            opened = quoted || (i > 0 && raw[i - 1] == '"') ? opened : i;
            quoted = !quoted;
        }

        return (int)bad.LineNumber + CsvBytes.LineOf(raw, opened) - 1;
    }
}
