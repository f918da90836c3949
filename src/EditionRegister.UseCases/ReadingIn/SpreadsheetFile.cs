using System.Security.Cryptography;
using EditionRegister.Formats.Csv;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>A CSV file opened: its name, rows, matched columns, and the hash that tells whether it was read in before.</summary>
internal sealed record SpreadsheetFile(string Name, CsvTable Table, IReadOnlyList<ColumnMatch> Columns, string Sha256)
{
    public static SpreadsheetFile Open(string path, IReadOnlyList<string> maps)
    {
        var bytes = Bytes(path);
        var name = Path.GetFileName(path);
        var table = CsvFile.Read(bytes, name);

        return table.Rows.Count == 0
            ? throw ReadInRefusals.NoRows(name)
            : new SpreadsheetFile(name, table, ColumnMatch.All(table.Headers, maps), Convert.ToHexStringLower(SHA256.HashData(bytes)));
    }

    private static byte[] Bytes(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : throw ReadInRefusals.FileMissing(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw ReadInRefusals.FileUnreadable(path, failure.Message);
        }
    }
}
