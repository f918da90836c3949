using System.Globalization;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.People;

/// <summary>Finds people by what a person types: their number, or their name with case and accents ignored.</summary>
public static class Persons
{
    /// <exception cref="Domain.RefusedException">person-not-found or person-ambiguous.</exception>
    public static long Find(AddressBook book, string who)
    {
        if (long.TryParse(who, NumberStyles.None, CultureInfo.InvariantCulture, out var id) && book.People.ContainsKey(id))
        {
            return id;
        }

        var folded = SearchText.Fold(who);
        var called = book.People.Values.Where(person => !person.IsErased).ToList();
        var same = called.Where(person => person.Name is { } name && SearchText.Fold(name) == folded).ToList();
        var found = same.Count > 0 ? same : [.. called.Where(person => person.Name is { } name && SearchText.Fold(name).Contains(folded, StringComparison.Ordinal))];

        return found switch
        {
            [var one] => one.Id,
            [] => throw PeopleRefusals.NotFound(who),
            _ => throw PeopleRefusals.Several(who, found),
        };
    }
}
