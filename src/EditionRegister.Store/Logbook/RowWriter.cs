using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>Puts facts into the register's tables. Only the logbook's writer may call it: nothing else changes a register row.</summary>
internal sealed class RowWriter(SqliteConnection connection) : IDisposable
{
    private readonly Dictionary<string, SqliteCommand> _prepared = new(StringComparer.Ordinal);

    /// <summary>Sets open and sealed facts on a row, makes the row where it is not yet, and works its derived facts out anew.</summary>
    public void Set(FactTable table, long id, IReadOnlyList<(Fact Fact, FactValue Value)> values, long v)
    {
        if (Update(table, id, values, v) == 0)
        {
            Insert(table, id, values, v);
        }

        if (table.Derived.Any(derived => values.Any(set => derived.Sources.Contains(set.Fact.Name))))
        {
            Derive(table, id, v);
        }
    }

    /// <summary>Only says which entry named the row last.</summary>
    /// <returns>False when no such row stands.</returns>
    public bool Touch(FactTable table, long id, long v) => Update(table, id, [], v) > 0;

    /// <summary>Nulls every sealed fact of a row and what was worked out from it.</summary>
    public void Forget(FactTable table, long id, long v) =>
        Update(table, id, [.. table.Facts.Where(fact => fact.Keeping != Keeping.Open).Select(fact => (fact, FactValue.Null))], v);

    public void Unset(FactTable table, long id)
    {
        var command = Prepared($"DELETE FROM {table.Name} WHERE id = @id");
        command.Parameters[0].Value = id;
        command.ExecuteNonQuery();
    }

    public void Dispose()
    {
        foreach (var command in _prepared.Values)
        {
            command.Dispose();
        }
    }

    private int Update(FactTable table, long id, IReadOnlyList<(Fact Fact, FactValue Value)> values, long v)
    {
        var assignments = string.Concat(values.Select(set => $"{set.Fact.Name} = @{set.Fact.Name}, "));

        return Run($"UPDATE {table.Name} SET {assignments}v = @v WHERE id = @id", id, values, v);
    }

    private void Insert(FactTable table, long id, IReadOnlyList<(Fact Fact, FactValue Value)> values, long v)
    {
        var names = string.Concat(values.Select(set => $", {set.Fact.Name}"));
        var parameters = string.Concat(values.Select(set => $", @{set.Fact.Name}"));
        Run($"INSERT INTO {table.Name} (id, v{names}) VALUES (@id, @v{parameters})", id, values, v);
    }

    private void Derive(FactTable table, long id, long v)
    {
        var sources = table.Derived.SelectMany(derived => derived.Sources).Distinct().ToList();
        Dictionary<string, string?> found = new(StringComparer.Ordinal);

        using (var command = connection.Command($"SELECT {string.Join(", ", sources)} FROM {table.Name} WHERE id = @1", id))
        using (var reader = command.ExecuteReader())
        {
            reader.Read();

            for (var i = 0; i < sources.Count; i++)
            {
                found[sources[i]] = reader.TextOrNull(i);
            }
        }

        List<(Fact, FactValue)> derived = [.. table.Derived.Select(fact => (fact, DerivedFacts.Of(fact, source => found[source])))];
        Update(table, id, derived, v);
    }

    private int Run(string sql, long id, IReadOnlyList<(Fact Fact, FactValue Value)> values, long v)
    {
        var command = Prepared(sql, values);

        foreach (var (fact, value) in values)
        {
            command.Parameters["@" + fact.Name].Value = value.Number is { } number ? number : (object?)value.Text ?? DBNull.Value;
        }

        command.Parameters["@id"].Value = id;
        command.Parameters["@v"].Value = v;

        return command.ExecuteNonQuery();
    }

    private SqliteCommand Prepared(string sql, IReadOnlyList<(Fact Fact, FactValue Value)>? values = null)
    {
        if (_prepared.TryGetValue(sql, out var known))
        {
            return known;
        }

        var command = connection.Command(sql);
        command.Parameters.Add(new SqliteParameter("@id", SqliteType.Integer));

        if (values is not null)
        {
            command.Parameters.Add(new SqliteParameter("@v", SqliteType.Integer));

            foreach (var (fact, _) in values)
            {
                command.Parameters.Add(new SqliteParameter("@" + fact.Name, fact.IsNumber ? SqliteType.Integer : SqliteType.Text));
            }
        }

        _prepared.Add(sql, command);

        return command;
    }
}
