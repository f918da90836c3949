namespace EditionRegister.UseCases.People;

/// <summary>The name a person is sorted by, where nobody says it: the last word of a person's name first; an organisation as it stands.</summary>
internal static class SortNames
{
    public static string Of(string name, bool isOrganisation) =>
        !isOrganisation && name.LastIndexOf(' ') is var space and > 0 ? $"{name[(space + 1)..]}, {name[..space]}" : name;
}
