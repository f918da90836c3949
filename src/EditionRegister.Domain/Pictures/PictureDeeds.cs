using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Pictures;

/// <summary>Pictures taken in, taken off, and let stand for an edition. A row and its file stay for ever: they are evidence.</summary>
public static class PictureDeeds
{
    /// <summary>The same bytes already on record for the same thing, or null.</summary>
    public static Picture? Same(Work work, NewPicture picture) => work.Pictures.FirstOrDefault(one =>
        one.Sha256 == picture.Sha256 && one.Impression == picture.Subject.Impression && one.Matrix == picture.Subject.Matrix);

    /// <summary>Whether recording it would tell the register nothing.</summary>
    public static bool IsOnRecord(Work work, NewPicture picture) =>
        Same(work, picture) is { IsShown: true } same && (picture.Subject.Edition is null || same.Edition == picture.Subject.Edition);

    /// <summary>Answers its row. The same bytes of the same thing are one picture: taken off before, it is shown again.</summary>
    /// <param name="work">The work.</param>
    /// <param name="picture">What is taken in.</param>
    /// <param name="place">Its place among those of one deed, from 0.</param>
    /// <param name="deed">Where the facts go.</param>
    /// <exception cref="RefusedException">picture-on-record.</exception>
    public static long Add(Work work, NewPicture picture, int place, Deed deed)
    {
        if (IsOnRecord(work, picture))
        {
            throw PictureRefusals.OnRecord(picture.FileName, Same(work, picture)!.Id);
        }

        var id = Same(work, picture)?.Id ?? New(work, picture, place, deed);
        deed.Set("picture", id, ("standing", "shown"));

        if (picture.Subject.Edition is { } edition)
        {
            deed.Set("picture", id, ("edition", edition));
        }

        return id;
    }

    /// <exception cref="RefusedException">picture-taken-off.</exception>
    public static void TakeOff(Picture picture, Deed deed)
    {
        if (!picture.IsShown)
        {
            throw PictureRefusals.TakenOff(picture.Id);
        }

        deed.Set("picture", picture.Id, ("standing", "taken-off"));
    }

    /// <exception cref="RefusedException">picture-shown-already.</exception>
    public static void PutBack(Picture picture, Deed deed)
    {
        if (picture.IsShown)
        {
            throw PictureRefusals.ShownAlready(picture.Id);
        }

        deed.Set("picture", picture.Id, ("standing", "shown"));
    }

    private static long New(Work work, NewPicture picture, int place, Deed deed)
    {
        var id = deed.NewId("picture");
        deed.Set(
            "picture", id,
            ("work", work.Id), ("ordinal", work.Pictures.Select(one => one.Ordinal).DefaultIfEmpty(0).Max() + 1 + place),
            ("impression", picture.Subject.Impression), ("matrix", picture.Subject.Matrix), ("sha256", picture.Sha256), ("media", picture.Media),
            ("bytes", picture.Bytes), ("width", picture.Width), ("height", picture.Height), ("file_name", picture.FileName),
            ("caption", picture.Caption), ("credit", picture.Credit));
        deed.SetDate("picture", id, "taken", picture.Taken);

        return id;
    }
}
