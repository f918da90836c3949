using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg close</c>: closes an edition.</summary>
internal static class CloseCommand
{
    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var on = Opt.Date("--on", "When. Else today.");
        CommandWithExample command = new("close", "Closes an edition: every number is accounted for, and the fate of the matrix is stated.", "edreg close 3 --on 2026-02-20") { edition, on };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(edition)!.Value;
            register.CloseEdition.Run(id, line.GetValue(on));
            var (work, closed) = register.LookAround.Edition(id);

            return new Recorded(EditionSaid.Closed(work, closed), json => EditionJson.Write(json, closed));
        }));

        return command;
    }
}
