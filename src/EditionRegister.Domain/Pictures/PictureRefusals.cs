using System.Globalization;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Pictures;

/// <summary>Why a picture is not taken in, or not taken off.</summary>
public static class PictureRefusals
{
    public static RefusedException OnRecord(string fileName, long id) => new(
        "picture-on-record", string.Create(CultureInfo.InvariantCulture, $"{fileName} is on record already, as picture {id}: the same bytes, of the same thing. Nothing was changed. `edreg picture list` shows what is on record."));

    public static RefusedException NoSuchPicture(long id) => new(
        "picture-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no picture {id} in this register. Nothing was changed. `edreg picture list` shows them with their numbers."));

    public static RefusedException TakenOff(long id) => new(
        "picture-taken-off", string.Create(CultureInfo.InvariantCulture, $"Picture {id} is taken off already. Nothing was changed. Its row and its file stay; `edreg picture list --all` shows them."));

    public static RefusedException ShownAlready(long id) => new("picture-shown-already", string.Create(CultureInfo.InvariantCulture, $"Picture {id} is shown. Nothing was changed. There is nothing to put back; `edreg picture list` shows what is on record."));

    public static RefusedException NoSubject() => new(
        "picture-of-nothing", "It was not said what the picture shows, and no file is called by a register code. Nothing was changed. Name a sheet, a block or an edition, or put the code of the sheet or block into the name of its file.");

    public static RefusedException OfAnotherWork(string what, Work work) => new(
        "picture-of-two-works", $"The {what} is not one of “{work.ShownTitle}”, and a picture is of one work. Nothing was changed. Add the picture twice, once for each.");

    public static RefusedException NoneMatches(int files, string first) => new(
        "picture-names-no-code",
        string.Create(CultureInfo.InvariantCulture, $"Of {files} {(files == 1 ? "file" : "files")} none has one code of this register in its name; the first is {first}. Nothing was changed. Name each after its sheet or block, such as 7KQ4-M2X3-front.jpg, or say with --sheet, --matrix or --edition what one file shows."));

    public static RefusedException NotAFile(string path) => new(
        "picture-not-a-file", $"{path} is no plain file: nothing is there, or a folder, a link or a device. Nothing was changed. Name the picture itself, or the pictures of a folder one by one, as in folder/*.jpg.");

    public static RefusedException NotOpened(string path, string why) => new("picture-not-opened", $"{path} cannot be read: {why.TrimEnd('.')}. Nothing was changed. Look whether the file is yours to read.");

    public static RefusedException NotKept(string path, string why) => new("picture-not-kept", $"{path} could not be copied into the register's images folder: {why.TrimEnd('.')}. Nothing was changed. Make room, or look whether the folder is yours to write.");

    public static RefusedException FileLost(long id, string path) => new(
        "picture-file-lost", string.Create(CultureInfo.InvariantCulture, $"The file of picture {id} is missing or is not the one that was taken in: {path}. Nothing was written after it. Put the original back from a copy; `edreg check --pictures` says which others are missing."));

    public static RefusedException NoneToPublish() => new("picture-none-shown", "Nothing that was chosen has a picture that is shown. Nothing was written. Add one with `edreg picture add`.");
}
