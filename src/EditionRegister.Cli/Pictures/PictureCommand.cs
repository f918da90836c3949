using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg picture</c>: pictures of sheets, blocks and editions.</summary>
internal static class PictureCommand
{
    public static Command Create(CommandContext context) => new CommandWithExample("picture", "Keeps pictures of sheets, blocks and editions, and writes copies to show to others.", "edreg picture add front.jpg --sheet 7KQ4-M2X3")
    {
        PictureAddCommand.Create(context),
        PictureListCommand.Create(context),
        PictureTakeOffCommand.Create(context),
        PicturePublishCommand.Create(context),
    };
}
