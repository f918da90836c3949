using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.People;

namespace EditionRegister.UseCases.People;

/// <summary>Why a person or a place cannot be recorded or found so.</summary>
public static class PeopleRefusals
{
    public static RefusedException NoName() =>
        new("name-missing", "A person needs a name. Nothing was changed. Give the name as it is written, as in “Mira Tolland”.");

    public static RefusedException NotFound(string who) =>
        new("person-not-found", $"Nobody called “{who}” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.");

    public static RefusedException Several(string who, IEnumerable<Person> found) =>
        new("person-ambiguous", $"“{who}” could be {string.Join(" or ", found.Select(person => string.Create(CultureInfo.InvariantCulture, $"{person.FullName} ({person.Id})")))}. Nothing was changed. Name the one you mean by number.");

    public static RefusedException KnownAlready(Person person) =>
        new("person-known-already", string.Create(CultureInfo.InvariantCulture, $"{person.FullName} is in the address book already, as {person.Id}. Nothing was changed. If this is somebody else of the same name, say so; on the command line with --another."));

    public static RefusedException PolicyUnknown(string policy) =>
        new("public-name-unknown", $"“{policy}” is no way to show a name in public. Nothing was changed. The ways are {string.Join(", ", PublicNamePolicy.Words)}.");

    public static RefusedException WordingMissing() =>
        new("public-wording-missing", "The public name is to be a wording, but none was given. Nothing was changed. Give it with --wording, as in “private collection”.");

    public static RefusedException PlaceNotFound(string path) =>
        new("place-not-found", $"There is no place “{path}”. Nothing was changed. Record it first with `edreg place add`; `edreg place list` shows the places there are.");

    public static RefusedException PlaceAmbiguous(string path, IEnumerable<string> found) =>
        new("place-ambiguous", $"“{path}” could be {string.Join(" or ", found)}. Nothing was changed. Name the outer place too, as in “Studio › Drawer 1”.");

    public static RefusedException PlaceKnownAlready(string path, long id) =>
        new("place-known-already", string.Create(CultureInfo.InvariantCulture, $"{path} is in the address book already, as place {id}. Nothing was changed. Give the place another name."));

    public static RefusedException PlaceInItself(string path, string into) =>
        new("place-in-itself", $"{path} cannot lie in {(path == into ? "itself" : $"{into}, which lies in it")}. Nothing was changed. Name another place, or say that it lies in none.");

    public static RefusedException PlaceEmpty() =>
        new("place-missing", "A place needs a name. Nothing was changed. Name it from the outside in, as in “Studio › Plan chest › Drawer 3”.");
}
