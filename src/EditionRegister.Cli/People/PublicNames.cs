using EditionRegister.Domain.People;

namespace EditionRegister.Cli;

/// <summary>What stands in public for someone of the address book; a policy nobody can read shows nothing of the name.</summary>
internal static class PublicNames
{
    public static string Of(Person person) => PublicName.Of(
        person.FullName,
        person.SortName,
        PublicNamePolicy.TryFind(person.Policy, out var policy) ? policy : PublicNamePolicy.Unnamed,
        person.ClassCode,
        person.Wording,
        person.IsProtected,
        person.IsOrganisation);
}
