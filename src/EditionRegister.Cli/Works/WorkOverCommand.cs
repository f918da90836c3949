using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg work-over</c>: a sheet left out was worked over by hand into a unique work of its own.</summary>
internal static class WorkOverCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The sheet left out.");
        var title = Opt.Text("--title", "TEXT", "The title of the work that came of it.");
        var untitled = Opt.Flag("--untitled", "It has no title.");
        var technique = Opt.Technique("Its technique. Else that of the print, worked over by hand.");
        var maker = Opt.Texts("--maker", "WHO", "Who worked it over: a name or number of the address book. Else the makers of the print.");
        var date = Opt.Date("--date", "When. Else today.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("work-over", "Records that a sheet left out was worked over by hand into a unique work of its own, linked with the sheet.", "edreg work-over 7KQ4-M2X3 --title \"Gull Rock by Night\"") { code, title, untitled, technique, maker, date, note };

        command.SetAction(line => context.Record(line, register =>
        {
            var (work, _) = register.WorkOver.Run(
                line.GetRequiredValue(code),
                new WorkingOver
                {
                    Title = line.GetValue(title), Untitled = line.GetValue(untitled), Technique = line.GetValue(technique),
                    Date = line.GetValue(date) ?? RecordedDate.None, Note = line.GetValue(note),
                },
                line.GetValue(maker));
            var (old, made) = (register.LookAround.Impression(line.GetRequiredValue(code)), register.LookAround.Work(work));

            return new Recorded(SortingSaid.WorkedOver(old.Work, old.Impression, made), json =>
            {
                json.WriteNumber("work", made.Id);
                json.WriteNumber("edition", made.Editions[0].Id);
                json.WriteString("code", made.Impressions[0].ShownCode);
                json.WriteNumber("worked_over_from", old.Work.Id);
                json.WriteString("worked_over_code", old.Impression.ShownCode);
            });
        }));

        return command;
    }
}
