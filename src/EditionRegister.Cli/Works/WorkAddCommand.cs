using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary><c>edreg work add</c>: records a work with its people.</summary>
internal static class WorkAddCommand
{
    public static Command Create(CommandContext context)
    {
        var title = Opt.Text("--title", "TITLE", "The title as the maker gave it.");
        var untitled = Opt.Flag("--untitled", "The maker gave it none.");
        var titleUnknown = Opt.Flag("--title-unknown", "Nobody knows its title.");
        var makers = Opt.Texts("--maker", "WHO", "Who made it: a name or number of the address book.");
        var makerUnknown = Opt.Flag("--maker-unknown", "Nobody knows who made it.");
        var year = Opt.Date("--year", "When the image was made.");
        var technique = Opt.Technique("How it is printed, in words: linocut.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        ContributorOptions contributors = new();
        CommandWithExample command = new("add", "Records a work: its title, its makers, and who else had a part in it.", "edreg work add --title Harbour --maker \"Mira Tolland\" --year 2026 --technique linocut")
        {
            title, untitled, titleUnknown, makers, makerUnknown, year, technique,
        };
        contributors.AddTo(command);
        command.Add(note);

        command.SetAction(line => context.Record(line, register =>
        {
            OneAtMost(line, title, untitled, titleUnknown);
            var named = line.GetValue(makers) ?? [];
            var id = register.RecordWork.Run(
                new NewWork
                {
                    Title = line.GetValue(title),
                    Untitled = line.GetValue(untitled),
                    TitleUnknown = line.GetValue(titleUnknown),
                    MakerUnknown = named.Length == 0 ? line.GetValue(makerUnknown) : NotBoth(line.GetValue(makerUnknown)),
                    Year = line.GetValue(year) ?? RecordedDate.None,
                    Technique = line.GetValue(technique),
                    Note = line.GetValue(note),
                },
                named,
                contributors.Read(line));
            var work = register.LookAround.Work(id);

            return new Recorded(BenchSaid.Recorded(work), json => json.WriteNumber("work", id));
        }));

        return command;
    }

    private static void OneAtMost(ParseResult line, Option<string?> title, Option<bool> untitled, Option<bool> unknown)
    {
        if (new[] { line.GetValue(title) is not null, line.GetValue(untitled), line.GetValue(unknown) }.Count(said => said) > 1)
        {
            throw new WrongUsageException("--title, --untitled and --title-unknown exclude each other.");
        }
    }

    private static bool NotBoth(bool makerUnknown) =>
        makerUnknown ? throw new WrongUsageException("--maker and --maker-unknown exclude each other.") : false;
}
