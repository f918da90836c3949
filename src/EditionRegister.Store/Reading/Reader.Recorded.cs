namespace EditionRegister.Store.Reading;

public sealed partial class Reader
{
    private readonly Dictionary<long, string> _recorded = [];

    /// <summary>When an entry was recorded, UTC, ISO 8601; nothing where there is no such entry.</summary>
    public string RecordedAt(long n)
    {
        if (!_recorded.TryGetValue(n, out var at))
        {
            _recorded[n] = at = Rows("SELECT at FROM logbook WHERE n = @1", [n], row => row.GetString(0)).FirstOrDefault() ?? "";
        }

        return at;
    }
}
