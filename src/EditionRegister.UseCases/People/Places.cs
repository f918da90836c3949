using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.People;

/// <summary>Finds places by the path a person types.</summary>
public static class Places
{
    /// <summary>Parts of a path, from the outside in; › > and / part them.</summary>
    public static IReadOnlyList<string> Split(string path) =>
        [.. path.Split(['›', '>', '/'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>Paths put in the order of this stand as in a tree: each place right behind the one it lies in.</summary>
    public static string TreeOrder(string path) => string.Join('\u0001', Folded(path.Split(AddressBook.Inside)));

    /// <summary>The one place whose path ends as typed; the whole path wins over the end of another.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found or place-ambiguous.</exception>
    public static long Find(AddressBook book, string path)
    {
        var wanted = Folded(Split(path));
        var found = book.Places.Keys.Where(id => wanted.Count > 0 && EndsWith(Folded(Split(book.PathOf(id))), wanted)).ToList();
        var whole = found.Where(id => Split(book.PathOf(id)).Count == wanted.Count).ToList();

        return (whole.Count == 1 ? whole : found) switch
        {
            [var one] => one,
            [] => throw PeopleRefusals.PlaceNotFound(path),
            var several => throw PeopleRefusals.PlaceAmbiguous(path, several.Select(id => book.PathOf(id))),
        };
    }

    /// <summary>A place, and every place inside it.</summary>
    public static IReadOnlySet<long> Within(AddressBook book, long outer)
    {
        HashSet<long> found = [outer];

        while (book.Places.Values.Where(place => place.Inside is { } inside && found.Contains(inside)).Any(place => found.Add(place.Id)))
        {
            // Each round goes on until one finds nothing new.
        }

        return found;
    }

    private static List<string> Folded(IEnumerable<string> names) => [.. names.Select(SearchText.Fold)];

    private static bool EndsWith(List<string> path, List<string> end) => path.Count >= end.Count && path.TakeLast(end.Count).SequenceEqual(end);
}
