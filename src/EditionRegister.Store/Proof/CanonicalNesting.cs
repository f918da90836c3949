namespace EditionRegister.Store.Proof;

/// <summary>
/// Where a writer stands: what is open, whether a comma is due, and the last name.
/// It always watches, not in Debug only: a body in the wrong order would be hashed for good.
/// </summary>
internal sealed class CanonicalNesting
{
    private readonly Stack<Level> _open = new();
    private Level _here = new(IsObject: false);

    /// <summary>Says whether a comma goes before this name.</summary>
    public bool Name(string name)
    {
        if (!_here.IsObject || _here.IsNamed)
        {
            throw new InvalidOperationException("A name belongs in an object, and its value comes before the next name.");
        }

        if (_here.LastName is { } last && string.CompareOrdinal(last, name) >= 0)
        {
            throw new ArgumentException($"The name “{name}” comes after “{last}”, which is not the order of UTF-16 code units.", nameof(name));
        }

        var comma = _here.LastName is not null;
        _here = _here with { LastName = name, IsNamed = true };

        return comma;
    }

    /// <summary>Says whether a comma goes before this value.</summary>
    public bool Value()
    {
        if (_here.IsObject ? !_here.IsNamed : _open.Count == 0 && _here.HasValue)
        {
            throw new InvalidOperationException("A value in an object needs a name, and a document is one value.");
        }

        var comma = _here is { IsObject: false, HasValue: true };
        _here = _here with { HasValue = true, IsNamed = false };

        return comma;
    }

    public void Open(bool isObject)
    {
        _open.Push(_here);
        _here = new Level(isObject);
    }

    public void Close(bool isObject)
    {
        if (_open.Count == 0 || _here.IsObject != isObject || _here.IsNamed)
        {
            throw new InvalidOperationException("What is closed is not what was opened last, or a name still waits for its value.");
        }

        _here = _open.Pop();
    }

    public void EnsureWhole()
    {
        if (_open.Count > 0 || !_here.HasValue)
        {
            throw new InvalidOperationException("The document is not whole: something is still open, or nothing was written.");
        }
    }

    public void Clear()
    {
        _open.Clear();
        _here = new Level(IsObject: false);
    }

    private readonly record struct Level(bool IsObject, bool HasValue = false, bool IsNamed = false, string? LastName = null);
}
