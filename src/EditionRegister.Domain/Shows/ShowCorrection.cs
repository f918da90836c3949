using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Shows;

/// <summary>What is put right about a show; null leaves a fact as it is.</summary>
public sealed record ShowCorrection
{
    public string? Name { get; init; }

    /// <summary>exhibition, sale, fair or other.</summary>
    public string? Kind { get; init; }

    public long? Place { get; init; }

    public long? Host { get; init; }

    public RecordedDate? Opens { get; init; }

    public RecordedDate? Closes { get; init; }

    public string? Note { get; init; }

    /// <summary>The facts it changes, with the values they are to have.</summary>
    public IEnumerable<(string Fact, FactValue Value)> Changes => new (string Fact, FactValue Value)[]
    {
        ("name", Name?.Trim()), ("kind", Kind), ("place", Place), ("host", Host), ("opens", Opens?.Text), ("closes", Closes?.Text), ("note", Note),
    }.Where(change => !change.Value.IsNull);

    /// <exception cref="RefusedException">show-name-missing, show-kind-unknown or show-dates-crossed.</exception>
    public void Record(Show show, Deed deed)
    {
        ShowDeeds.Sound(Name ?? show.ShownName, Kind ?? show.Kind, Opens ?? show.Opens, Closes ?? show.Closes);

        foreach (var (fact, value) in Changes.Where(change => change.Fact is not ("opens" or "closes")))
        {
            deed.Set("show", show.Id, (fact, value));
        }

        if (Opens is not null)
        {
            deed.SetDate("show", show.Id, "opens", Opens);
        }

        if (Closes is not null)
        {
            deed.SetDate("show", show.Id, "closes", Closes);
        }
    }
}
