using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg undo</c>: undoes a file that was read in.</summary>
internal static class UndoCommand
{
    public static Command Create(CommandContext context)
    {
        var batch = Arg.Id("BATCH", "The number of the batch, as `edreg read` told it.");
        CommandWithExample command = new("undo", "Undoes a file that was read in, while nothing was built on it.", "edreg undo 2") { batch };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(batch)!.Value;
            var count = register.UndoBatch.Run(id);

            return new Recorded(ReadInShown.Undone(id, count), json =>
            {
                json.WriteNumber("batch", id);
                json.WriteNumber("impressions", count);
            });
        }));

        return command;
    }
}
