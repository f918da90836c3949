namespace EditionRegister.Domain.People;

/// <summary>What documents and lists call a person.</summary>
public static class NamesInPublic
{
    extension(Person person)
    {
        /// <summary>By the person's policy; one that cannot be read shows nothing.</summary>
        public string PublicText => person.Name is { } name
            ? PublicName.Of(
                name,
                person.SortName,
                PublicNamePolicy.TryFind(person.Policy, out var policy) ? policy : PublicNamePolicy.Unnamed,
                person.ClassCode,
                person.Wording,
                person.IsProtected,
                person.IsOrganisation)
            : person.IsProtected ? PublicName.UnnamedPupil : person.FullName;

        /// <summary>Who made or printed a work is named whole, unless protected.</summary>
        public string CreditText => person.IsProtected ? person.PublicText : person.FullName;
    }
}
