using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Text;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.People;

/// <summary>Finds each place of a path, and makes those that are not known yet.</summary>
internal sealed class PlacesOnTheWay(Writing writing)
{
    private readonly Dictionary<(long? Inside, string Name), long> _places = writing.Read.Book.Places.Values
        .Where(place => place.Name is not null)
        .GroupBy(place => (place.Inside, SearchText.Fold(place.Name!)))
        .ToDictionary(same => same.Key, same => same.First().Id);

    /// <summary>The innermost place; a keeper is set on the outermost one that is new, a note on the innermost where that is new.</summary>
    public long Find(IReadOnlyList<string> names, long? keeper, string? note = null)
    {
        long? inside = null;
        var keeps = keeper;

        for (var at = 0; at < names.Count; at++)
        {
            var name = names[at];
            var key = (inside, SearchText.Fold(name));

            if (!_places.TryGetValue(key, out var id))
            {
                id = writing.NewId("place");
                var deed = writing.On(Root.Place(id));
                deed.Set("place", id, ("name", name), ("inside", inside), ("keeper", keeps));

                if (note is not null && at == names.Count - 1)
                {
                    deed.Set("place", id, ("note", note));
                }

                _places.Add(key, id);
                keeps = null;
            }

            inside = id;
        }

        return inside!.Value;
    }
}
