using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.Logbook;

/// <summary>One entry of the logbook whole, with the ones before and after it a key away.</summary>
internal sealed class EntryPage(Desk desk, long n) : TextPage
{
    private long _n = n;
    private long _all;
    private EntrySeen? _seen;
    private bool _isReadInStanding;
    private (int Width, IReadOnlyList<Line> Lines)? _drawn;

    public override string Title => $"entry {Counted.Figure(_n)}";

    public override string Explains =>
        "One entry as it stands in the logbook: what was done, when and by whom, and every fact it sets. "
        + "Names, contacts, notes, titles and the like are sealed: the entry holds their hash, and the words lie beside it, so that they can be erased one day and the logbook still be proved. "
        + "Leaf is the hash of this entry, head that of all entries up to it. A certificate prints the number of its entry and this head in the same groups of eight: when they agree, nothing up to here was changed since.";

    public override IReadOnlyList<KeyDeed> Keys => [.. KeysOfEntry(), KeyDeed.Opens("Esc", "go back", () => Back.Once)];

    public override IReadOnlyList<Line> Text(int width)
    {
        if (_drawn is not { } drawn || drawn.Width != width)
        {
            drawn = (width, _seen is null ? [NoneSuch()] : EntryText.Of(_seen, width));
            _drawn = drawn;
        }

        return drawn.Lines;
    }

    public override async Task RefreshAsync()
    {
        (_all, _seen, _isReadInStanding) = await desk.Store.Do(register =>
        {
            var seen = register.LookAround.EntryWhole(_n);
            var stands = seen?.Entry is { Deed: var deed, Batch: { } batch } && UndoBatch.MayUndo(deed) && register.LookAround.StandingBatches([batch]).Count > 0;

            return (register.LookAround.Head().N, seen, stands);
        });
        _drawn = null;
    }

    private IEnumerable<KeyDeed> KeysOfEntry()
    {
        if (_seen is { Entry: { } entry } && ThingOfEntry.Key(desk, entry.Root) is { } go)
        {
            yield return go;
        }

        if (_isReadInStanding)
        {
            yield return BatchUndoing.Key(desk, _n);
        }

        if (_n > 1)
        {
            yield return Turns("Left", "the one before", -1);
        }

        if (_n < _all)
        {
            yield return Turns("Right", "the one after", 1);
        }
    }

    private KeyDeed Turns(string key, string does, int step) => new(key, does, async () =>
    {
        _n += step;
        Moves("Home", 1);
        await RefreshAsync();

        return null;
    });

    private Line NoneSuch() => $"The logbook has no entry {Counted.Figure(_n)}: it runs from 1 to {Counted.Figure(_all)}.";
}
