using System.Globalization;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>Short ways to say a statement to a connection.</summary>
internal static class Commands
{
    extension(SqliteConnection connection)
    {
        public SqliteCommand Command(string sql, params ReadOnlySpan<object?> parameters)
        {
            var command = connection.CreateCommand();
            command.CommandText = sql;

            for (var i = 0; i < parameters.Length; i++)
            {
                command.Parameters.AddWithValue(string.Create(CultureInfo.InvariantCulture, $"@{i + 1}"), parameters[i] ?? DBNull.Value);
            }

            return command;
        }

        public int Run(string sql, params ReadOnlySpan<object?> parameters)
        {
            using var command = connection.Command(sql, parameters);

            return command.ExecuteNonQuery();
        }

        /// <summary>The single number a query answers with; 0 where it answers nothing.</summary>
        public long Number(string sql, params ReadOnlySpan<object?> parameters)
        {
            using var command = connection.Command(sql, parameters);

            return command.ExecuteScalar() is long number ? number : 0;
        }

        public string? Text(string sql, params ReadOnlySpan<object?> parameters)
        {
            using var command = connection.Command(sql, parameters);

            return command.ExecuteScalar() as string;
        }
    }

    extension(SqliteDataReader reader)
    {
        public string? TextOrNull(int column) => reader.IsDBNull(column) ? null : reader.GetString(column);

        public long? NumberOrNull(int column) => reader.IsDBNull(column) ? null : reader.GetInt64(column);
    }
}
