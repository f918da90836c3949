using System.Globalization;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Looking;

public sealed partial class LookAround
{
    /// <summary>From so many on it is quicker to count for everybody.</summary>
    private const int ManyPeople = 200;

    /// <summary>Everybody of whom every word is found in name, sort name or class code, by sort name; blank finds all.</summary>
    public IReadOnlyList<PersonListed> People(string? text) => store.Read(reader =>
    {
        var words = Words(text);
        var found = reader.Book.People.Values
            .Where(person => Holds(words, [person.FullName, person.SortName, person.ClassCode]))
            .OrderBy(person => SearchText.Fold(person.SortName ?? person.FullName), StringComparer.Ordinal).ThenBy(person => person.Id)
            .ToList();
        var few = found.Count < ManyPeople ? found.ConvertAll(person => person.Id) : null;
        var (has, owns, works) = (reader.HavingCounts(few), reader.OwningCounts(few), reader.WorkCounts());

        return found.ConvertAll(person => new PersonListed(person, has.GetValueOrDefault(person.Id), owns.GetValueOrDefault(person.Id), works.GetValueOrDefault(person.Id)));
    });

    /// <summary>Places of which every word is found on the path, by path; blank finds all.</summary>
    public IReadOnlyList<PlaceListed> Places(string? text) => store.Read(reader =>
    {
        var words = Words(text);
        var book = reader.Book;

        return new PlacesListed(reader).Of(book.Places.Keys.Where(id => Holds(words, [book.PathOf(id)])));
    });

    /// <summary>Someone with everything they have, own and had a part in.</summary>
    /// <param name="id">Who.</param>
    /// <param name="take">How many sheets to list at most; the counts are of all.</param>
    /// <exception cref="Domain.RefusedException">person-not-found.</exception>
    public PersonSeen PersonWhole(long id, int take = 1_000) => store.Read(reader => new PersonSeen(
        reader.Book.Person(id) ?? throw PeopleRefusals.NotFound(id.ToString(CultureInfo.InvariantCulture)), reader.RolesOf(id), reader.Owning(id, take), reader.Having(id, take)));

    /// <summary>A place with everything that lies in it, or in a place inside it.</summary>
    /// <param name="id">Which place.</param>
    /// <param name="take">How many sheets to list at most; the counts are of all.</param>
    /// <exception cref="Domain.RefusedException">place-not-found.</exception>
    public PlaceSeen PlaceWhole(long id, int take = 1_000) => store.Read(reader =>
    {
        var place = reader.Book.Places.GetValueOrDefault(id) ?? throw PeopleRefusals.PlaceNotFound(id.ToString(CultureInfo.InvariantCulture));
        var within = UseCases.People.Places.Within(reader.Book, id);
        PlacesListed listed = new(reader);

        return new PlaceSeen(place, listed.Of(id), listed.Of(within.Where(inner => inner != id)), reader.LyingIn([.. within], take))
        {
            Matrices = [.. LyingMatrices(reader, [.. within])],
        };
    });

    /// <summary>What was written before in fields that take any text.</summary>
    public Suggested Suggestions() => store.Read(reader =>
    {
        var (works, uses) = (reader.WorkCounts(), reader.PlaceUses());

        return new Suggested(
            reader.Papers(),
            reader.Techniques(),
            reader.Materials(),
            reader.RunStates(),
            [.. from person in reader.Book.People.Values
                where !person.IsErased && person.Name is not null
                orderby works.GetValueOrDefault(person.Id) descending, person.Id
                select person.Name],
            [.. from place in reader.Book.Places.Values
                where place.Name is not null
                orderby uses.GetValueOrDefault(place.Id) descending, place.Id
                select reader.Book.PathOf(place.Id)]);
    });

    private static List<string> Words(string? text) => [.. (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(SearchText.Fold)];

    private static bool Holds(List<string> words, ReadOnlySpan<string?> texts)
    {
        var folded = SearchText.Fold(string.Join('\n', texts!));

        return words.TrueForAll(word => folded.Contains(word, StringComparison.Ordinal));
    }
}
