using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg work edit</c>: puts right what the record says of a work.</summary>
internal static class WorkEditCommand
{
    public static Command Create(CommandContext context)
    {
        var id = Arg.Id("WORK", "The number of the work.");
        var title = Opt.Text("--title", "TITLE", "The title, put right.");
        var year = Opt.Date("--year", "The year, put right.");
        var technique = Opt.Technique("The technique, put right.");
        var seen = Opt.Id("--seen", "an entry", "The entry that had last written the work when you looked at it; a change made since is then refused.");
        CommandWithExample command = new("edit", "Puts right what the record says of a work.", "edreg work edit 3 --title \"Harbour, Morning\" --seen 12") { id, title, year, technique, seen };

        command.SetAction(line => context.Record(line, register =>
        {
            var (newTitle, newYear, newTechnique) = (line.GetValue(title), line.GetValue(year), line.GetValue(technique));
            List<string> changed = [.. new[] { newTitle is null ? null : "title", newYear is null ? null : "year", newTechnique is null ? null : "technique" }.OfType<string>()];

            if (changed.Count == 0)
            {
                throw new WrongUsageException("Nothing is said that would be put right: give --title, --year or --technique.");
            }

            var work = line.GetValue(id)!.Value;
            register.EditWork.Run(work, newTitle, newYear, newTechnique, line.GetValue(seen));
            var corrected = register.LookAround.Work(work);

            return new Recorded(BenchSaid.PutRight(corrected, changed), json =>
            {
                json.WriteNumber("work", work);
                json.WriteNumber("v", corrected.V);
                json.Texts("changed", changed);
            });
        }));

        return command;
    }
}
