namespace EditionRegister.Bench.Readings;

/// <summary>A tab-separated file with one header line and no quoting, as the check data is written.</summary>
internal sealed class TableFile
{
    private readonly Dictionary<string, int> _columns;

    private TableFile(Dictionary<string, int> columns, List<string[]> rows) => (_columns, Rows) = (columns, rows);

    public IReadOnlyList<string[]> Rows { get; }

    public string this[string[] row, string column] => row[_columns[column]];

    public static TableFile Read(string path)
    {
        var lines = File.ReadAllLines(path);
        var columns = lines[0].Split('\t').Select((name, place) => (name, place)).ToDictionary(one => one.name, one => one.place, StringComparer.Ordinal);

        return new TableFile(columns, [.. lines.Skip(1).Where(line => line.Length > 0).Select(line => line.Split('\t'))]);
    }
}
