namespace EditionRegister.Tui.Hall;

/// <summary>The sheets chosen for what is done next, by register code, in the order in which they were marked.</summary>
internal sealed class MarkedSheets
{
    private readonly OrderedDictionary<string, bool> _codes = new(StringComparer.Ordinal);

    public int Count => _codes.Count;

    public IEnumerable<string> Codes => _codes.Keys;

    /// <summary>As commands and choices take them: “7KQ4-M2X3, 9H2B-PPQA”.</summary>
    public string AsText => string.Join(", ", Codes);

    public bool Holds(string code) => _codes.ContainsKey(code);

    public void Turn(string code)
    {
        if (!_codes.Remove(code))
        {
            _codes.Add(code, true);
        }
    }

    public void Mark(string code) => _codes.TryAdd(code, true);

    public void Clear() => _codes.Clear();
}
