using System.CommandLine;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Cli;

/// <summary><c>edreg picture publish</c>: writes copies for others to see.</summary>
internal static class PicturePublishCommand
{
    public static Command Create(CommandContext context)
    {
        PictureOptions of = new();
        var work = Opt.Id("--work", "a work", "Only of this work.");
        var to = Opt.Text("--out", "DIR", "The folder to write into. Else pictures in the register's exports folder.");
        var longest = Opt.Some("--longest", $"The longest side of a copy in pixels. Else {WritePublicPictures.UsualSide}.");
        CommandWithExample command = new("publish", "Writes copies of pictures to show to others: upright, no larger than asked, and without anything the camera wrote into the file.", "edreg picture publish --edition 1 --longest 1200") { work, to, longest };
        of.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var files = register.WritePublicPictures.Run(of.Read(line), line.GetValue(work), context.PathOf(line.GetValue(to)), line.GetValue(longest) ?? WritePublicPictures.UsualSide);

            return new Recorded(PicturesSaid.Published(files.Count), json => json.Texts("files", files))
            {
                More = printer => Written.Print(context, printer, files, PicturesSaid.MindPublished),
            };
        }));

        return command;
    }
}
