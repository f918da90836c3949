using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg whole</c>: says that an edition known in part is now wholly accounted for.</summary>
internal static class WholeCommand
{
    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        CommandWithExample command = new("whole", "Says that an edition of yours, known in part so far, is wholly accounted for here; then it can be certified and closed.", "edreg whole 3") { edition };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(edition)!.Value;
            register.MakeEditionWhole.Run(id);
            var (work, whole) = register.LookAround.Edition(id);

            return new Recorded(EditionSaid.Whole(work, whole), json => json.WriteNumber("edition", id));
        }));

        return command;
    }
}
