using System.Linq.Expressions;
using EditionRegister.Store.Mapping;
using Microsoft.EntityFrameworkCore;

namespace EditionRegister.Store.Lists;

/// <summary>Places with all that lie in them, however deep; a place that came to lie in itself by damage is counted once.</summary>
internal static class PlacesInside
{
    extension(RegisterContext register)
    {
        public List<long> PlacesWithin(long place) => register.PlacesWithin(one => one.Id == place);

        public List<long> PlacesNamed(SearchWord word) =>
            register.PlacesWithin(place => EF.Functions.Like(place.Search!, word.Anywhere, SearchWord.Escape));

        private List<long> PlacesWithin(Expression<Func<PlaceRow, bool>> which)
        {
            HashSet<long> within = [.. register.Places.Where(which).Select(place => place.Id)];
            var inside = register.Places.Where(place => place.Inside != null).Select(place => new { place.Id, place.Inside }).ToLookup(place => place.Inside, place => place.Id);
            Queue<long> open = new(within);

            while (open.TryDequeue(out var place))
            {
                foreach (var inner in inside[place].Where(within.Add))
                {
                    open.Enqueue(inner);
                }
            }

            return [.. within];
        }
    }
}
