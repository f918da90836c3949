using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg set part remove</c>: takes a work out of a set again.</summary>
internal static class SetPartRemoveCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work that is the set.");
        var part = Arg.Id("PART", "The number of the work that is its part.");
        CommandWithExample command = new("remove", "Takes a work out of a set again, while none of its sheets lies in a copy.", "edreg set part remove 9 7") { work, part };

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, removed) = (line.GetValue(work)!.Value, line.GetValue(part)!.Value);
            register.ChangeSetParts.Remove(id, removed);
            var seen = register.LookAround.Set(id);

            return new Recorded(SetsSaid.PartRemoved(seen.Work, register.LookAround.Work(removed)), json => SetJson.WriteHead(json, seen));
        }));

        return command;
    }
}
