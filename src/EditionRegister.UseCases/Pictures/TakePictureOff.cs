using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Pictures;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Pictures;

/// <summary>Takes a picture off what it shows, or puts it back. Its row and its file stay.</summary>
public sealed class TakePictureOff(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">picture-not-found or picture-taken-off.</exception>
    public (Work Work, Picture Picture) Run(long picture) => Change("take-picture-off", picture, PictureDeeds.TakeOff);

    /// <exception cref="Domain.RefusedException">picture-not-found or picture-shown-already.</exception>
    public (Work Work, Picture Picture) PutBack(long picture) => Change("put-picture-back", picture, PictureDeeds.PutBack);

    private (Work Work, Picture Picture) Change(string name, long picture, Action<Picture, Deed> deed) => store.Write(name, writing =>
    {
        var work = writing.Read.WorkOrRefuse(writing.Read.PicturesWork(picture) ?? throw PictureRefusals.NoSuchPicture(picture));
        var found = work.Pictures.First(one => one.Id == picture);
        deed(found, writing.On(Root.Work(work.Id)));

        return (work, found);
    });
}
