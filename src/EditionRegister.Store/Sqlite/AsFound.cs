using System.Text;
using EditionRegister.Domain.Facts;
using Microsoft.Data.Sqlite;
using static SQLitePCL.raw;

namespace EditionRegister.Store.Sqlite;

/// <summary>Reads values of a file that may be damaged: nothing is turned into another kind, shortened or thrown at.</summary>
internal static class AsFound
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    extension(SqliteDataReader reader)
    {
        /// <summary>A word every row has; empty where damage took it away, which is a word of no list.</summary>
        public string Word(int column) => reader.IsDBNull(column) ? "" : reader.GetString(column);

        /// <summary>A number every row has; 0 where damage took it away, which is the id of nothing.</summary>
        public long Figure(int column) => reader.IsDBNull(column) ? 0 : reader.GetInt64(column);

        /// <summary>The bytes of a blob; none where something else stands.</summary>
        public byte[] BytesOrNone(int column) =>
            sqlite3_column_type(reader.Handle, column) == SQLITE_BLOB ? sqlite3_column_blob(reader.Handle, column).ToArray() : [];

        /// <summary>
        /// A fact's value, or null for what no fact can be: a fraction, a blob, text that is no UTF-8. Read as a string,
        /// a fraction or a blob passes for text, and any broken bytes for the U+FFFD that may rightly stand there.
        /// </summary>
        public FactValue? ValueOrNull(int column) => sqlite3_column_type(reader.Handle, column) switch
        {
            SQLITE_NULL => FactValue.Null,
            SQLITE_INTEGER => sqlite3_column_int64(reader.Handle, column),
            SQLITE_TEXT => TextOrNull(sqlite3_column_blob(reader.Handle, column)),
            _ => null,
        };
    }

    private static FactValue? TextOrNull(ReadOnlySpan<byte> utf8)
    {
        try
        {
            return Strict.GetString(utf8);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
