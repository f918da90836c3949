using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>A key of a list from which one thing is picked, and what it does with that.</summary>
internal sealed record PickDeed<T>(string Key, string Does, Func<T, Task<Opening?>> Do);

/// <summary>How a list understands what is typed, and which of its lines are meant by a part in which something was read.</summary>
internal sealed record PickReading<T>(Func<string, Sought> Read, Func<SoughtPart, IReadOnlySet<T>> Meant);

/// <summary>A list from which one thing is picked, found as one types.</summary>
internal sealed class PickPage<T>(string title, string explains, string empty, IReadOnlyList<ListColumn> columns, Func<T, IReadOnlyList<string>> cells, Func<Task<IReadOnlyList<T>>> read, IReadOnlyList<PickDeed<T>> deeds) : ListPage
{
    private Sought _sought = Sought.Everything;
    private IReadOnlyList<(T One, string Folded)> _all = [];
    private IReadOnlyList<T> _found = [];
    private Listing _rows = new(columns, 0, _ => []);

    public override string Title => title;

    public override string Explains => explains;

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0 ? "Nothing is found by that." : empty;

    public override string? FindsIn => Reading is null ? "any word in the list" : "any word in the list, number, date, technique";

    public override string? Understood => Reading is null ? null : SoughtSaid.Short(_sought);

    /// <summary>Null where there is nothing to read but words.</summary>
    public PickReading<T>? Reading { get; init; }

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. _found.Count == 0 ? [] : deeds.Select(deed => new KeyDeed(deed.Key, deed.Does, () => deed.Do(_found[Current]))),
        KeyDeed.Opens("Esc", "pick nothing", () => Back.Once),
    ];

    public override async Task RefreshAsync()
    {
        _all = [.. (await read()).Select(one => (one, SearchText.Fold(string.Join(' ', cells(one)))))];
        Filtered();
    }

    protected override void Filtered()
    {
        _sought = Reading?.Read(Filter) ?? Sought.Words(Filter);
        IEnumerable<(T One, string Folded)> found = _all;

        foreach (var part in _sought.Parts)
        {
            var meant = part.IsRead ? Reading!.Meant(part) : null;
            var words = part.Words.Select(SearchText.Fold).ToList();
            found = found.Where(one => words.TrueForAll(word => one.Folded.Contains(word, StringComparison.Ordinal)) || meant?.Contains(one.One) is true);
        }

        _found = [.. found.Select(one => one.One)];
        _rows = Listing.Of(columns, _found, cells);
    }
}
