using EditionRegister.Domain.Impressions;

namespace EditionRegister.Tui.Bench;

/// <summary>The sheets of a signing session in the order in which they come, where it stands, and what was on record before.</summary>
internal sealed class SigningOrder
{
    private readonly List<long> _sheets = [];
    private readonly Dictionary<long, PencilOnRecord> _before = [];

    public int At { get; private set; }

    public int Count => _sheets.Count;

    /// <summary>Sheets from here on, this one included.</summary>
    public int Left => _sheets.Count - At;

    public long? Here => At < _sheets.Count ? _sheets[At] : null;

    /// <summary>Takes up what has changed: unsigned sheets that are new come at the end, those without their number go.</summary>
    public void Follow(IReadOnlyList<Impression> numbered)
    {
        var there = numbered.Select(sheet => sheet.Id).ToHashSet();
        At -= _sheets.Take(At).Count(sheet => !there.Contains(sheet));
        _sheets.RemoveAll(sheet => !there.Contains(sheet));
        _sheets.AddRange(numbered.Where(sheet => !sheet.IsSigned && !_sheets.Contains(sheet.Id)).Select(sheet => sheet.Id));
    }

    public void Next() => At = Math.Min(At + 1, _sheets.Count);

    public void Back() => At = Math.Max(0, At - 1);

    public void GoTo(long sheet) => At = _sheets.IndexOf(sheet) is >= 0 and var found ? found : At;

    public void Skip()
    {
        if (Here is { } here)
        {
            _sheets.RemoveAt(At);
            _sheets.Add(here);
        }
    }

    /// <summary>Keeps what was on record before this session first wrote on a sheet.</summary>
    public void Remember(Impression sheet) => _before.TryAdd(sheet.Id, PencilOnRecord.Of(sheet));

    public PencilOnRecord? Before(long sheet) => _before.GetValueOrDefault(sheet);
}
