using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;

namespace EditionRegister.Cli;

/// <summary><c>edreg shows make</c>: records a show.</summary>
internal static class ShowsMakeCommand
{
    public static Command Create(CommandContext context)
    {
        var name = Arg.Text("NAME", "What it is called, as announced.");
        ShowOptions options = new(" Else exhibition.");
        CommandWithExample command = new("make", "Records an exhibition, sale or fair, with nothing listed for it yet.", "edreg shows make \"Open studio 2026\" --kind sale --place Studio --opens 2026-06-12 --closes 2026-06-14") { name };
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var said = options.Read(line, register, line.GetRequiredValue(name));
            NewShow made = new() { Name = said.Name!, Place = said.Place, Host = said.Host, Opens = said.Opens ?? RecordedDate.None, Closes = said.Closes ?? RecordedDate.None, Note = said.Note };
            var id = register.MakeShow.Run(said.Kind is { } kind ? made with { Kind = kind } : made);
            var seen = register.LookAround.Show(id);

            return new Recorded(ShowsShown.Recorded(seen.Show), json => ShowJson.WriteHead(json, seen.Show, seen.Book));
        }));

        return command;
    }
}
