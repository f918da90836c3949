using System.CommandLine;
using EditionRegister.Domain.Sets;

namespace EditionRegister.Cli;

/// <summary><c>edreg set make</c>: makes a work a set.</summary>
internal static class SetMakeCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work. Its own sheets, the colophons, are the copies.");
        var form = Opt.Word("--form", SetForm.Words, "What holds the prints together. Else portfolio.");
        var signedOn = Opt.Word("--signed-on", SetForm.SignedOn, "Where the signature stands. Else unknown.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("make", "Makes a work a set of prints: its own sheets are the copies, each with the set's number on its colophon.", "edreg set make 9 --form portfolio --signed-on colophon") { work, form, signedOn, note };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            register.MakeSet.Run(id, line.GetValue(form) ?? "portfolio", line.GetValue(signedOn) ?? "unknown", line.GetValue(note));
            var seen = register.LookAround.Set(id);

            return new Recorded(SetsSaid.Made(seen.Work), json => SetJson.WriteHead(json, seen));
        }));

        return command;
    }
}
