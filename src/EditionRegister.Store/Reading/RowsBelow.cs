namespace EditionRegister.Store.Reading;

/// <summary>Rows by the id of what they belong to, each list in the order in which it was read.</summary>
internal sealed class RowsBelow<T>
{
    private readonly Dictionary<long, List<T>> _rows = [];

    /// <summary>None where nothing belongs to it.</summary>
    public IReadOnlyList<T> this[long id] => _rows.TryGetValue(id, out var rows) ? rows : [];

    public void Add(long id, T row)
    {
        if (!_rows.TryGetValue(id, out var rows))
        {
            rows = [];
            _rows.Add(id, rows);
        }

        rows.Add(row);
    }
}
