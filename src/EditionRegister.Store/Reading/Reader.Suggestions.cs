using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    /// <summary>Papers of print runs, the one used most first.</summary>
    public IReadOnlyList<string> Papers() => ByFrequency("print_run", "paper");

    /// <summary>States of print runs, the one used most first.</summary>
    public IReadOnlyList<string> RunStates() => ByFrequency("print_run", "state");

    /// <summary>Techniques of works, the one used most first.</summary>
    public IReadOnlyList<string> Techniques() => ByFrequency("work", "technique");

    /// <summary>Materials of blocks, plates and stones, the one used most first.</summary>
    public IReadOnlyList<string> Materials() => ByFrequency("matrix", "material");

    /// <summary>How often something was ever put into each place.</summary>
    public IReadOnlyDictionary<long, long> PlaceUses() => Rows(
        "SELECT to_place, count(*) FROM whereabouts WHERE to_place IS NOT NULL GROUP BY to_place", [],
        row => (Id: row.Figure(0), Count: row.Figure(1))).ToDictionary(one => one.Id, one => one.Count);

    private List<string> ByFrequency(string table, string column) =>
        Rows($"SELECT {column} FROM {table} WHERE {column} IS NOT NULL AND trim({column}) <> '' GROUP BY {column} ORDER BY count(*) DESC, {column}", [], row => row.Word(0));
}
