using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace EditionRegister.Store.Lists;

/// <summary>The values of a statement that is put together from pieces; each is named in it where it stands.</summary>
internal sealed class SqlPieces
{
    private readonly List<object> _values = [];

    /// <summary>The statement whole; the values go to the database beside it and never in its text.</summary>
    public FormattableString Whole(string sql) => FormattableStringFactory.Create(sql, [.. _values]);

    public string Value(object value)
    {
        _values.Add(value);

        return string.Create(CultureInfo.InvariantCulture, $"{{{_values.Count - 1}}}");
    }

    /// <summary>Ids as rows of their own, however many they are.</summary>
    public string Ids(IEnumerable<long> ids) => $"(SELECT value FROM json_each({Value(JsonSerializer.Serialize(ids))}))";

    public string Words(IEnumerable<string> words) => $"({string.Join(", ", words.Select(Value))})";
}
