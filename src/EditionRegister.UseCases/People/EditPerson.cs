using EditionRegister.Domain.Facts;
using EditionRegister.Domain.People;
using EditionRegister.Store;

namespace EditionRegister.UseCases.People;

/// <summary>Corrects what the address book says of someone.</summary>
public sealed class EditPerson(RegisterStore store)
{
    /// <param name="who">Name or number.</param>
    /// <param name="correction">What is put right.</param>
    /// <param name="seen">The entry that had last written the person when the caller looked.</param>
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous, name-missing, public-name-unknown, public-wording-missing, changed-meanwhile.</exception>
    public long Run(string who, PersonCorrection correction, long? seen = null) => store.Write("edit-person", writing =>
    {
        var person = writing.Read.Book.People[Persons.Find(writing.Read.Book, who)];
        var deed = writing.On(Root.Person(person.Id));
        Sound(person, correction);

        foreach (var (fact, value) in Changes(person, correction))
        {
            writing.StillAsSeen("person", person.Id, seen, fact, value);
            deed.Set("person", person.Id, (fact, value));
        }

        return person.Id;
    });

    private static void Sound(Person person, PersonCorrection correction)
    {
        if (correction.Name is { } name && string.IsNullOrWhiteSpace(name))
        {
            throw PeopleRefusals.NoName();
        }

        if (correction.PublicName is { } policy && !PublicNamePolicy.Words.Contains(policy))
        {
            throw PeopleRefusals.PolicyUnknown(policy);
        }

        if ((correction.PublicName ?? person.Policy) == "wording" && string.IsNullOrWhiteSpace(correction.Wording ?? person.Wording))
        {
            throw PeopleRefusals.WordingMissing();
        }
    }

    private static IEnumerable<(string Fact, FactValue Value)> Changes(Person person, PersonCorrection correction)
    {
        var sortName = correction.SortName ?? (correction.Name is { } name ? SortNames.Of(name.Trim(), person.IsOrganisation) : null);

        return new (string Fact, string? Value)[]
        {
            ("name", correction.Name?.Trim()), ("sort_name", sortName), ("protected", correction.IsProtected is { } kept ? kept ? "yes" : "no" : null), ("public_name", correction.PublicName), ("public_wording", correction.Wording),
            ("class_code", correction.ClassCode), ("contact", correction.Contact), ("note", correction.Note),
        }.Where(change => change.Value is not null).Select(change => (change.Fact, string.IsNullOrWhiteSpace(change.Value) ? FactValue.Null : (FactValue)change.Value));
    }
}
