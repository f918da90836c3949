using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Shows;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Shows;

/// <summary>Corrects what the record says of a show; its list is changed by adding and removing.</summary>
public sealed class EditShow(RegisterStore store)
{
    /// <param name="id">The show.</param>
    /// <param name="correction">What is put right.</param>
    /// <param name="seen">The entry that had last written the show when the caller looked at it.</param>
    /// <exception cref="Domain.RefusedException">show-not-found, show-name-missing, show-kind-unknown, show-dates-crossed, or changed-meanwhile with both values.</exception>
    public long Run(long id, ShowCorrection correction, long? seen = null) => store.Write("edit-show", writing =>
    {
        var show = writing.Read.ShowOrRefuse(id);

        foreach (var (fact, value) in correction.Changes)
        {
            writing.StillAsSeen("show", id, seen, fact, value);
        }

        correction.Record(show, writing.On(Root.Show(id)));

        return id;
    });
}
