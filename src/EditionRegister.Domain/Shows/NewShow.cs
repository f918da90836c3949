using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Shows;

/// <summary>A show as it is first recorded.</summary>
public sealed record NewShow
{
    public required string Name { get; init; }

    /// <summary>exhibition, sale, fair or other.</summary>
    public string Kind { get; init; } = "exhibition";

    public long? Place { get; init; }

    public long? Host { get; init; }

    public RecordedDate Opens { get; init; } = RecordedDate.None;

    public RecordedDate Closes { get; init; } = RecordedDate.None;

    public string? Note { get; init; }

    /// <exception cref="RefusedException">show-name-missing, show-kind-unknown or show-dates-crossed.</exception>
    public void Record(long id, Deed deed)
    {
        ShowDeeds.Sound(Name, Kind, Opens, Closes);
        deed.Set("show", id, ("name", Name.Trim()), ("kind", Kind), ("place", Place), ("host", Host), ("note", Note));
        deed.SetDate("show", id, "opens", Opens);
        deed.SetDate("show", id, "closes", Closes);
    }
}
