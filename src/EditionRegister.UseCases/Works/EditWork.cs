using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>Corrects what the record says of a work. Null leaves a fact as it is.</summary>
public sealed class EditWork(RegisterStore store)
{
    /// <param name="id">The work.</param>
    /// <param name="title">Its title, put right.</param>
    /// <param name="year">Its year, put right.</param>
    /// <param name="technique">Its technique, put right.</param>
    /// <param name="seen">The entry that had last written the work when the caller looked at it.</param>
    /// <exception cref="Domain.RefusedException">work-not-found, or changed-meanwhile with both values.</exception>
    public bool Run(long id, string? title, RecordedDate? year, string? technique, long? seen = null) => store.Write("edit-work", writing =>
    {
        var work = writing.Read.Work(id) ?? throw WorkRefusals.NoSuchWork(id);
        var deed = writing.On(Root.Work(id));

        if (title is not null)
        {
            writing.StillAsSeen("work", id, seen, "title", title);
            deed.Set("work", id, ("title", title), ("title_state", "given"));
        }

        if (year is not null)
        {
            writing.StillAsSeen("work", id, seen, "year", year.Text);
            deed.SetDate("work", id, "year", year);
        }

        if (technique is not null)
        {
            writing.StillAsSeen("work", id, seen, "technique", technique);
            deed.SetTechnique(id, technique, work.Techniques, writing.Read.OwnWords.Techniques);
        }

        return true;
    });
}
