namespace EditionRegister.Domain.People;

/// <summary>Anyone: artist, pupil, printer, workshop, buyer, gallery, school. Values as found, so that damage can be told.</summary>
public sealed record Person(
    long Id,
    long V,
    string What,
    string? Name,
    string? SortName,
    string Protected,
    string Policy,
    string? Wording,
    string? ClassCode,
    string? Contact,
    string? Note,
    string Erased)
{
    public bool IsOrganisation => What == "organisation";

    /// <summary>Where damage took the word away, more is kept private, never less.</summary>
    public bool IsProtected => Protected != "no";

    public bool IsErased => Erased == "yes";

    /// <summary>The whole name, for the keeper of the register.</summary>
    public string FullName => Name ?? (IsErased ? "(erased)" : "(no name)");
}
