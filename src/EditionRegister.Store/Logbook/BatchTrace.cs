using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Reads out of the logbook what a batch did and what stood there before: the entries before it are folded, for the rows it touched only.</summary>
internal static class BatchTrace
{
    public static BatchTraced Of(SqliteConnection connection, long batch)
    {
        var (deed, first, last, takesAway) = ("", 0L, 0L, false);
        Dictionary<RowName, Touched> touched = [];
        List<Touched> inOrder = [];

        foreach (var entry in Entries(connection, "batch = @1", batch))
        {
            (deed, first, last) = (entry.Deed, first == 0 ? entry.N : first, entry.N);
            takesAway |= entry.Unsets.Count > 0 || entry.Erased.Count > 0;

            foreach (var row in entry.Sets.Where(row => row.Table.Name is not ("batch" or "code" or "matrix_code")))
            {
                RowName name = new(row.Table.Name, row.Id);

                if (!touched.TryGetValue(name, out var one))
                {
                    touched.Add(name, one = new Touched(entry.Root, row.Table, row.Id));
                    inOrder.Add(one);
                }

                one.Take(row, SealedOf(connection, entry.N, entry.Sets.IndexOf(row), row));
            }
        }

        foreach (var entry in Entries(connection, "n < @1", first))
        {
            Fold(connection, entry, touched);
        }

        return new BatchTraced(deed, first, last, [.. inOrder.Select(one => one.Traced(connection))], takesAway);
    }

    private static void Fold(SqliteConnection connection, EntryReader entry, Dictionary<RowName, Touched> touched)
    {
        for (var i = 0; i < entry.Sets.Count; i++)
        {
            var row = entry.Sets[i];

            if (touched.TryGetValue(new RowName(row.Table.Name, row.Id), out var one))
            {
                one.Earlier(row, SealedOf(connection, entry.N, i, row));
            }
        }

        foreach (var row in entry.Unsets)
        {
            if (touched.TryGetValue(new RowName(row.Table.Name, row.Id), out var one))
            {
                one.NoMore();
            }
        }
    }

    private static IEnumerable<EntryReader> Entries(SqliteConnection connection, string which, long bound)
    {
        EntryReader entry = new();
        using var command = connection.Command($"SELECT body FROM logbook WHERE {which} ORDER BY n", bound);
        using var reader = command.ExecuteReader();

        while (reader.Read())
        {
            entry.Read(reader.GetFieldValue<byte[]>(0));

            yield return entry;
        }
    }

    /// <summary>The sealed facts of a row; null where they were erased, empty where it has none.</summary>
    private static List<ReadFact>? SealedOf(SqliteConnection connection, long n, int index, ReadRow row)
    {
        if (row.Commitment is null)
        {
            return [];
        }

        using var command = connection.Command("SELECT body FROM sealed WHERE n = @1 AND i = @2", n, index);

        return command.ExecuteScalar() is byte[] body ? RowJson.ReadSealed(body).Facts : null;
    }

    /// <summary>One row while it is being traced.</summary>
    private sealed class Touched(string root, FactTable table, long id)
    {
        private readonly SortedDictionary<int, FactValue> _set = [];
        private readonly Dictionary<int, FactValue> _before = [];
        private bool _stood;
        private bool _isErased;

        public void Take(ReadRow row, List<ReadFact>? hidden)
        {
            // Which facts an erased seal held nobody knows; it may have been any of them.
            _isErased |= hidden is null;

            foreach (var fact in row.Facts.Concat(hidden ?? []))
            {
                _set[fact.Place] = fact.Value;
            }
        }

        public void Earlier(ReadRow row, List<ReadFact>? hidden)
        {
            _stood = true;
            _isErased |= hidden is null;

            foreach (var fact in row.Facts.Concat(hidden ?? []))
            {
                _before[fact.Place] = fact.Value;
            }
        }

        public void NoMore()
        {
            _stood = false;
            _before.Clear();
        }

        public RowTraced Traced(SqliteConnection connection)
        {
            List<(string, FactValue)>? before = _stood ? [.. _set.Keys.Select(place => (table.Facts[place].Name, _before.GetValueOrDefault(place)))] : null;

            return new RowTraced(root, table.Name, id, IsAsLeft(connection), before, _stood && _isErased);
        }

        /// <summary>
        /// By values and not by the entry that wrote the row last: what came after may itself have been undone. Of a row that the batch made every
        /// fact counts, of one that it changed those that it set.
        /// </summary>
        private bool IsAsLeft(SqliteConnection connection)
        {
            using var command = connection.Command($"SELECT {string.Join(", ", table.Facts.Select(fact => fact.Name))} FROM {table.Name} WHERE id = @1", id);
            using var reader = command.ExecuteReader();

            return reader.Read() && Enumerable.Range(0, table.Facts.Count)
                .Where(place => table.Facts[place].Keeping != Keeping.Derived && (!_stood || _set.ContainsKey(place)))
                .All(place => ValueAt(reader, place) == _set.GetValueOrDefault(place));
        }

        private FactValue ValueAt(SqliteDataReader reader, int place) =>
            reader.IsDBNull(place) ? FactValue.Null : table.Facts[place].IsNumber ? reader.GetInt64(place) : reader.GetString(place);
    }
}
