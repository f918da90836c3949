using EditionRegister.Domain;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace EditionRegister.Formats.Toml;

/// <summary>A TOML file whose keys are all known beforehand; a key in a table is written <c>table.key</c>.</summary>
internal sealed class TomlText
{
    private readonly Dictionary<string, KeyValueSyntax> _entries;
    private readonly Dictionary<string, int> _tableLines;
    private readonly TomlRefusals _refusals;

    private TomlText(DocumentSyntax document, TomlRefusals refusals)
    {
        _refusals = refusals;
        _tableLines = document.Tables.DistinctBy(Name).ToDictionary(Name, Line, StringComparer.Ordinal);
        _entries = document.KeyValues.Select(entry => (Key: Name(entry), Entry: entry))
            .Concat(document.Tables.SelectMany(table => table.Items.Select(entry => (Key: $"{Name(table)}.{Name(entry)}", Entry: entry))))
            .DistinctBy(pair => pair.Key, StringComparer.Ordinal) // [[x]] may stand twice; it is refused below
            .ToDictionary(pair => pair.Key, pair => pair.Entry, StringComparer.Ordinal);
    }

    /// <exception cref="RefusedException">It is not TOML, or has a table or key that is not among <paramref name="known"/>.</exception>
    public static TomlText Parse(string text, string fileName, IReadOnlyList<string> known)
    {
        TomlRefusals refusals = new(fileName);
        var document = SyntaxParser.Parse(text, fileName, validate: true);

        if (document.Diagnostics.FirstOrDefault(found => found.Kind == DiagnosticMessageKind.Error) is { } error)
        {
            throw refusals.Broken(error.Span.Start.Line + 1, error.Span.Start.Column + 1, error.Message);
        }

        TomlText read = new(document, refusals);
        read.RefuseUnknown(document, known);
        return read;
    }

    public string? Text(string key) => ValueOf(key) switch
    {
        null => null,
        StringValueSyntax text => text.Value,
        _ => throw Wrong(key, "must be text in quotes"),
    };

    public double? Number(string key) => ValueOf(key) switch
    {
        null => null,
        FloatValueSyntax number when double.IsFinite(number.Value) => number.Value,
        IntegerValueSyntax whole => whole.Value,
        _ => throw Wrong(key, "must be a number, such as 0.5, without quotes"),
    };

    public long? Whole(string key) => ValueOf(key) switch
    {
        null => null,
        IntegerValueSyntax whole => whole.Value,
        _ => throw Wrong(key, "must be a whole number without quotes"),
    };

    public RefusedException Wrong(string key, string whatIsRight)
    {
        var start = _entries[key].Value!.Span.Start;
        return _refusals.Wrong(start.Line + 1, start.Column + 1, key, _entries[key].Value!.ToString().Trim(), whatIsRight);
    }

    /// <summary>A key that must be there and is not; told at the line of its table, or line 1.</summary>
    public RefusedException Missing(string key) =>
        _refusals.Missing(_tableLines.GetValueOrDefault(key.Split('.')[0], 1), key);

    private ValueSyntax? ValueOf(string key) => _entries.GetValueOrDefault(key)?.Value;

    private void RefuseUnknown(DocumentSyntax document, IReadOnlyList<string> known)
    {
        foreach (var table in document.Tables)
        {
            if (table is not TableSyntax || !known.Any(key => key.StartsWith(Name(table) + ".", StringComparison.Ordinal)))
            {
                throw _refusals.Unknown(Line(table), table.Span.Start.Column + 1, $"[{Name(table)}]", known);
            }
        }

        foreach (var (key, entry) in _entries.Where(pair => !known.Contains(pair.Key)))
        {
            throw _refusals.Unknown(entry.Span.Start.Line + 1, entry.Span.Start.Column + 1, key, known);
        }
    }

    private static string Name(TableSyntaxBase table) => table.Name!.ToString().Trim();

    private static string Name(KeyValueSyntax entry) => entry.Key!.ToString().Trim();

    private static int Line(TableSyntaxBase table) => table.Span.Start.Line + 1;
}
