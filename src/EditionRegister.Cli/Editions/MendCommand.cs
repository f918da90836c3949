using System.CommandLine;
using EditionRegister.Domain.Editions;

namespace EditionRegister.Cli;

/// <summary><c>edreg mend</c>: mends a size declared by mistake.</summary>
internal static class MendCommand
{
    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var numbering = Arg.Numbering("The numbering as it should have been declared: 1-10, A/P I-III.");
        CommandWithExample command = new("mend", "Mends a size declared by mistake, while no sheet is signed or has left.", "edreg mend 3 1-10") { edition, numbering };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(edition)!.Value;
            register.MendSize.Run(id, NumberingPlan.Read(line.GetRequiredValue(numbering), register.LookAround.OwnWords()));

            return EditionRecorded.As("mended", register, id);
        }));

        return command;
    }
}
