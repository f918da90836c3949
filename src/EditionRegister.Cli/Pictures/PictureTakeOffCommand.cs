using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg picture take-off</c>: takes a picture off what it shows, or puts it back.</summary>
internal static class PictureTakeOffCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("PICTURE", "The number of the picture.");
        var back = Opt.Flag("--back", "Put it back instead.");
        CommandWithExample command = new("take-off", "Takes a picture off what it shows. Its row and its file stay.", "edreg picture take-off 3") { id, back };

        command.SetAction(line => context.Record(line, register =>
        {
            var (picture, isBack) = (line.GetValue(id)!.Value, line.GetValue(back));
            var (work, found) = isBack ? register.TakePictureOff.PutBack(picture) : register.TakePictureOff.Run(picture);

            return new Recorded(isBack ? PicturesSaid.PutBack(work, found) : PicturesSaid.TakenOff(work, found), json => json.WriteNumber("picture", picture));
        }));

        return command;
    }
}
