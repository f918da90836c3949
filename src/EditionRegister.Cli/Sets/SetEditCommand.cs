using System.CommandLine;
using EditionRegister.Domain.Sets;

namespace EditionRegister.Cli;

/// <summary><c>edreg set edit</c>: puts right what was recorded of a set.</summary>
internal static class SetEditCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work that is the set.");
        var form = Opt.Word("--form", SetForm.Words, "What holds the prints together.");
        var signedOn = Opt.Word("--signed-on", SetForm.SignedOn, "Where the signature stands.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("edit", "Puts right what was recorded of a set; what is not said stays as it is.", "edreg set edit 9 --signed-on both") { work, form, signedOn, note };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            register.EditSet.Run(id, line.GetValue(form), line.GetValue(signedOn), line.GetValue(note));
            var seen = register.LookAround.Set(id);

            return new Recorded(SetsSaid.PutRight(seen.Work), json => SetJson.WriteHead(json, seen));
        }));

        return command;
    }
}
