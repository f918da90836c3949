using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Works;

/// <summary>A work as it is first recorded. Unknown is said, never left blank.</summary>
public sealed record NewWork
{
    public string? Title { get; init; }

    public bool Untitled { get; init; }

    public bool TitleUnknown { get; init; }

    public IReadOnlyList<long> Makers { get; init; } = [];

    public bool MakerUnknown { get; init; }

    public RecordedDate Year { get; init; } = RecordedDate.None;

    public string? Technique { get; init; }

    public string? Note { get; init; }

    /// <param name="id">Its row.</param>
    /// <param name="own">The register's own words, for what is read in the technique.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">title-missing or maker-missing.</exception>
    public void Record(long id, OwnWords own, Deed deed)
    {
        if (string.IsNullOrWhiteSpace(Title) && !Untitled && !TitleUnknown)
        {
            throw WorkRefusals.NoTitle();
        }

        if (Makers.Count == 0 && !MakerUnknown)
        {
            throw WorkRefusals.NoMaker();
        }

        deed.Set("work", id,
            ("title", Untitled || TitleUnknown ? null : Title!.Trim()),
            ("title_state", Untitled ? "untitled" : TitleUnknown ? "unknown" : "given"),
            ("maker_state", Makers.Count == 0 ? "unknown" : "named"),
            ("note", Note));
        deed.SetTechnique(id, Technique, before: [], own.Techniques);
        deed.SetDate("work", id, "year", Year);

        for (var i = 0; i < Makers.Count; i++)
        {
            Join(id, Makers[i], Role.Maker, i + 1, deed);
        }
    }

    /// <summary>Adds a person to a work in a role.</summary>
    public static void Join(long work, long person, Role role, int ordinal, Deed deed) =>
        deed.Set("work_role", deed.NewId("work_role"), ("work", work), ("person", person), ("role", role.Word), ("ordinal", ordinal));
}
