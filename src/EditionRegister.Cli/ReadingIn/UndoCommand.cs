using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg undo</c>: undoes a batch: a file that was read in, or a deed over several works.</summary>
internal static class UndoCommand
{
    public static Command Create(CommandContext context)
    {
        var batch = Arg.Id("BATCH", "The number of the batch, as `edreg read` told it and `edreg log` shows it.");
        CommandWithExample command = new("undo", "Undoes a batch while nothing was built on it: a file that was read in, or a deed over several works at once.", "edreg undo 2") { batch };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(batch)!.Value;
            var undone = register.UndoBatch.Undo(id);

            return new Recorded(BatchesSaid.Undone(id, undone), json =>
            {
                json.WriteNumber("batch", id);
                json.WriteString("deed", undone.Deed);
                json.WriteNumber("impressions", undone.Impressions);
            });
        }));

        return command;
    }
}
