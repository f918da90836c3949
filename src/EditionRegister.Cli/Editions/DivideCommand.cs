using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg divide</c>: who is to have which numbers.</summary>
internal static class DivideCommand
{
    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var numbers = Arg.Ranges("NUMBERS", "Which numbers: 1-20, A/P I or B.A.T.");
        var to = Opt.Text("--to", "WHO", "Who is to have them: a name or number of the address book.");
        var agreed = Opt.Date("--agreed", "When that was agreed. Else not known.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        var takeBack = Opt.Flag("--take-back", "Take back what was agreed of these numbers.");
        CommandWithExample command = new("divide", "Records who is to have which numbers of an edition, as agreed. Whose they are is told by sales and gifts, not by this.", "edreg divide 3 21-25 --to \"Saltmarsh Print Studio\"") { edition, numbers, to, agreed, note, takeBack };

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, which, who) = (line.GetValue(edition)!.Value, line.GetRequiredValue(numbers), line.GetValue(to));

            if (line.GetValue(takeBack) == who is not null)
            {
                throw new WrongUsageException("Say with --to who is to have the numbers, or with --take-back that nobody is: one of them.");
            }

            var count = who is null ? register.DivideEdition.TakeBack(id, which) : register.DivideEdition.Run(id, which, who, line.GetValue(agreed), line.GetValue(note));
            var (work, found) = register.LookAround.Edition(id);
            var name = who is null ? null : Names.Of(register, who);

            return new Recorded(EditionSaid.Divided(work, found, count, name), json =>
            {
                json.WriteNumber("edition", id);
                json.WriteNumber("numbers", count);
                json.WriteString("to", name);
            });
        }));

        return command;
    }
}
