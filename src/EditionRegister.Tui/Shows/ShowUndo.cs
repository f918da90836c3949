using EditionRegister.Domain.Shows;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Shows;

/// <summary>How a correction of a show is undone: by another that says what stood there before.</summary>
internal static class ShowUndo
{
    /// <param name="desk">The desk.</param>
    /// <param name="before">The show before it was corrected.</param>
    /// <param name="correction">What was put right.</param>
    /// <param name="v">The entry that did.</param>
    /// <returns>Null where a place or a host was named for the first time: no correction takes that away.</returns>
    public static Undoing? Of(Desk desk, Show before, ShowCorrection correction, long v)
    {
        if ((correction.Place is not null && before.Place is null) || (correction.Host is not null && before.Host is null))
        {
            return null;
        }

        ShowCorrection back = new()
        {
            Name = correction.Name is null ? null : before.Name,
            Kind = correction.Kind is null ? null : before.Kind,
            Place = correction.Place is null ? null : before.Place,
            Host = correction.Host is null ? null : before.Host,
            Opens = correction.Opens is null ? null : before.Opens,
            Closes = correction.Closes is null ? null : before.Closes,
            Note = correction.Note is null ? null : before.Note ?? "",
        };

        return new Undoing("the correction", async () => ShowsShown.PutRight((await desk.Store.Do(register =>
        {
            register.EditShow.Run(before.Id, back, v);
            return register.LookAround.Show(before.Id);
        })).Show));
    }
}
