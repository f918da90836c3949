using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg set part add</c>: adds works to a set.</summary>
internal static class SetPartAddCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work that is the set.");
        Argument<long[]?> parts = new("PARTS")
        {
            HelpName = "PARTS",
            Description = "The numbers of the works that are its parts, in their order.",
            Arity = ArgumentArity.OneOrMore,
            CustomParser = Given.Many<long>((string text, out long value) => (value = NumberValue.TryReadId(text, out var id) ? id!.Value : 0) > 0, "the numbers of works, such as 5 6 7"),
        };
        CommandWithExample command = new("add", "Adds works to a set, behind the parts it has.", "edreg set part add 9 5 6 7") { work, parts };

        command.SetAction(line => context.Record(line, register =>
        {
            var (id, added) = (line.GetValue(work)!.Value, line.GetRequiredValue(parts)!.Distinct().ToArray());
            register.ChangeSetParts.Add(id, added);
            var seen = register.LookAround.Set(id);

            return new Recorded(SetsSaid.PartsAdded(seen.Work, added.Length), json => SetJson.WriteHead(json, seen));
        }));

        return command;
    }
}
