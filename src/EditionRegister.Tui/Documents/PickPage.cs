using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>A key of a list from which one thing is picked, and what it does with that.</summary>
internal sealed record PickDeed<T>(string Key, string Does, Func<T, Task<Opening?>> Do);

/// <summary>A list from which one thing is picked, found as one types.</summary>
internal sealed class PickPage<T>(string title, string explains, string empty, IReadOnlyList<ListColumn> columns, Func<T, IReadOnlyList<string>> cells, Func<Task<IReadOnlyList<T>>> read, IReadOnlyList<PickDeed<T>> deeds) : ListPage
{
    private IReadOnlyList<(T One, string Folded)> _all = [];
    private IReadOnlyList<T> _found = [];
    private Listing _rows = new(columns, 0, _ => []);

    public override string Title => title;

    public override string Explains => explains;

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0 ? "Nothing is found by that." : empty;

    public override string? FindsIn => "any word in the list";

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
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        _found = [.. _all.Where(one => words.All(word => one.Folded.Contains(word, StringComparison.Ordinal))).Select(one => one.One)];
        _rows = Listing.Of(columns, _found, cells);
    }
}
