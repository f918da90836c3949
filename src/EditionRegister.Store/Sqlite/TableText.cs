namespace EditionRegister.Store.Sqlite;

/// <summary>Reads the text of a CREATE TABLE as far as its columns go, past strings, names in quotes, comments and brackets within brackets.</summary>
internal static class TableText
{
    private static readonly string[] Constraints = ["CONSTRAINT", "PRIMARY", "UNIQUE", "CHECK", "FOREIGN"];

    /// <summary>Where the comma before the first constraint of the whole table stands, or the bracket that closes the table where it has none.</summary>
    public static int EndOfColumns(string table)
    {
        var depth = 0;

        for (var at = 0; at < table.Length; at = Next(table, at))
        {
            depth += table[at] switch { '(' => 1, ')' => -1, _ => 0 };
            var ends = depth == 0 ? table[at] == ')' : depth == 1 && table[at] == ',' && IsConstraint(table, at + 1);

            if (ends)
            {
                return at;
            }
        }

        throw new ArgumentException("The text makes no table.", nameof(table));
    }

    private static bool IsConstraint(string table, int from)
    {
        var at = from;

        while (at < table.Length && (char.IsWhiteSpace(table[at]) || IsComment(table, at)))
        {
            at = Next(table, at);
        }

        var word = at;

        while (word < table.Length && (char.IsAsciiLetterOrDigit(table[word]) || table[word] == '_'))
        {
            word++;
        }

        return Array.Exists(Constraints, constraint => table.AsSpan(at, word - at).Equals(constraint, StringComparison.OrdinalIgnoreCase));
    }

    private static bool IsComment(string text, int at) => string.CompareOrdinal(text, at, "--", 0, 2) == 0 || string.CompareOrdinal(text, at, "/*", 0, 2) == 0;

    /// <summary>Behind the letter at <paramref name="at"/>, or behind the whole of the comment, string or quoted name that begins there.</summary>
    private static int Next(string text, int at) => text[at] switch
    {
        '-' when IsComment(text, at) => Behind(text, "\n", at),
        '/' when IsComment(text, at) => Behind(text, "*/", at + 2),
        '\'' or '"' or '`' => Behind(text, text[at].ToString(), at + 1),
        '[' => Behind(text, "]", at + 1),
        _ => at + 1,
    };

    private static int Behind(string text, string end, int from) =>
        text.IndexOf(end, from, StringComparison.Ordinal) is >= 0 and var found ? found + end.Length : text.Length;
}
