using EditionRegister.Domain.Facts;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Text;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.People;

/// <summary>Puts someone into the address book.</summary>
public sealed class RecordPerson(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">name-missing, person-known-already, public-name-unknown, public-wording-missing.</exception>
    public long Run(NewPerson person) => store.Write("record-person", writing =>
    {
        if (string.IsNullOrWhiteSpace(person.Name))
        {
            throw PeopleRefusals.NoName();
        }

        var policy = person.PublicName ?? (person.IsProtected ? "initials" : "full");

        if (!PublicNamePolicy.Words.Contains(policy))
        {
            throw PeopleRefusals.PolicyUnknown(policy);
        }

        if (policy == "wording" && string.IsNullOrWhiteSpace(person.Wording))
        {
            throw PeopleRefusals.WordingMissing();
        }

        var folded = SearchText.Fold(person.Name);
        var known = writing.Read.Book.People.Values.FirstOrDefault(other => other.Name is { } name && SearchText.Fold(name) == folded);

        if (known is not null && !person.IsAnother)
        {
            throw PeopleRefusals.KnownAlready(known);
        }

        return Record(writing, person, policy);
    });

    /// <summary>Writes the facts of a new person.</summary>
    internal static long Record(Writing writing, NewPerson person, string policy)
    {
        var id = writing.NewId("person");
        var deed = writing.On(Root.Person(id));
        deed.Set("person", id,
            ("what", person.IsOrganisation ? "organisation" : "person"),
            ("name", person.Name.Trim()),
            ("sort_name", person.SortName ?? SortNames.Of(person.Name.Trim(), person.IsOrganisation)),
            ("protected", person.IsProtected ? "yes" : "no"),
            ("public_name", policy),
            ("public_wording", person.Wording),
            ("class_code", person.ClassCode),
            ("contact", person.Contact),
            ("note", person.Note),
            ("erased", "no"));

        return id;
    }
}
