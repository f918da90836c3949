using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Looking;

/// <summary>Counts what lies in places, and in the places inside them.</summary>
internal sealed class PlacesListed
{
    private readonly Domain.People.AddressBook _book;
    private readonly IReadOnlyDictionary<long, long> _lying;
    private readonly Dictionary<long, long> _within = [];

    public PlacesListed(Reader reader)
    {
        _book = reader.Book;
        _lying = reader.LyingCounts();

        foreach (var (place, count) in _lying)
        {
            HashSet<long> met = [];

            for (long? at = place; at is { } here && met.Add(here) && _book.Places.TryGetValue(here, out var found); at = found.Inside)
            {
                _within[here] = _within.GetValueOrDefault(here) + count;
            }
        }
    }

    public IReadOnlyList<PlaceListed> Of(IEnumerable<long> places) => [.. places.Select(Of).OrderBy(place => People.Places.TreeOrder(place.Path), StringComparer.Ordinal).ThenBy(place => place.Id)];

    public PlaceListed Of(long id)
    {
        var keeper = _book.Places[id].Keeper;

        return new PlaceListed(id, _book.PathOf(id), keeper, keeper is null ? null : _book.NameOf(keeper), _lying.GetValueOrDefault(id), _within.GetValueOrDefault(id));
    }
}
