using System.CommandLine;
using EditionRegister.Domain.Shows;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows edit</c>: puts right what is recorded of a show.</summary>
internal static class ShowsEditCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("SHOW", "The number of the show.");
        var name = Opt.Text("--name", "NAME", "What it is called, put right.");
        var seen = Opt.Id("--seen", "an entry", "The entry that had last written the show when you looked; a change made since is then refused.");
        ShowOptions options = new("");
        CommandWithExample command = new("edit", "Puts right what is recorded of a show.", "edreg shows edit 1 --closes 2026-06-21") { id, name };
        options.AddTo(command);
        command.Add(seen);

        command.SetAction(line => context.Record(line, register =>
        {
            var correction = options.Read(line, register, line.GetValue(name));

            if (correction == new ShowCorrection())
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --name, --closes or another option.");
            }

            var show = register.LookAround.Show(register.EditShow.Run(line.GetValue(id)!.Value, correction, line.GetValue(seen)));

            return new Recorded(ShowsShown.PutRight(show.Show), json => ShowJson.WriteHead(json, show.Show, show.Book));
        }));

        return command;
    }
}
