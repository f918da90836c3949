namespace EditionRegister.Domain.People;

/// <summary>What stands in public for a person. Where a policy lacks what it needs, more is kept private, never less.</summary>
public static class PublicName
{
    /// <summary>Stands for a protected person who is not named.</summary>
    public const string UnnamedPupil = "Unnamed pupil";

    /// <summary>Stands for anyone else who is not named; the trade's usual words.</summary>
    public const string PrivateCollection = "private collection";

    /// <summary>The text shown in public. Only the policy "full" shows the whole name of a person; an organisation always shows its own.</summary>
    /// <param name="name">As the person writes it.</param>
    /// <param name="sortName">"Family, Given"; without it, family and given names cannot be told apart.</param>
    /// <param name="policy">How much is shown.</param>
    /// <param name="classCode">Shown under the policy "class-code".</param>
    /// <param name="wording">Shown under the policy "wording", as it stands.</param>
    /// <param name="isProtected">A pupil: decides what an unnamed person is called.</param>
    /// <param name="isOrganisation">A workshop, gallery or school has no private name.</param>
    public static string Of(
        string name,
        string? sortName,
        PublicNamePolicy policy,
        string? classCode = null,
        string? wording = null,
        bool isProtected = false,
        bool isOrganisation = false)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(policy);

        NameParts parts = new(name, sortName);

        var shown = isOrganisation || policy == PublicNamePolicy.Full ? name.Trim()
            : policy == PublicNamePolicy.Wording ? wording?.Trim()
            : FromOpenToPrivate(parts, classCode).SkipWhile(step => step.Policy != policy).Select(step => step.Text).FirstOrDefault(parts.IsLessThanTheName);

        return !string.IsNullOrEmpty(shown) ? shown : isProtected ? UnnamedPupil : PrivateCollection;
    }

    private static IEnumerable<(PublicNamePolicy Policy, string? Text)> FromOpenToPrivate(NameParts parts, string? classCode) =>
    [
        (PublicNamePolicy.GivenAndInitial, parts.GivenAndInitial),
        (PublicNamePolicy.Given, parts.Given),
        (PublicNamePolicy.Initials, parts.Initials),
        (PublicNamePolicy.ClassCode, classCode?.Trim()),
    ];
}
