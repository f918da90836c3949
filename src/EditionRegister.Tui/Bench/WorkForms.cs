using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Works;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked of a work: when it is recorded, put right, or joined with somebody who had a part in it.</summary>
internal static class WorkForms
{
    private const string Title = "Title";
    private const string TitleIs = "The title is";
    private const string Makers = "Makers";
    private const string MakersAre = "The makers are";
    private const string Year = "Year";
    private const string Technique = "Technique";
    private const string Note = "Note";
    private const string Who = "Who";
    private const string TheyAre = "They are";
    private const string Did = "What they did";

    public static async Task<Opening?> NewAsync(Desk desk)
    {
        var (people, techniques, own) = await desk.Store.Do(Known);

        return new Form("Record a work", [
            new Field(Title) { Form = "as the maker gave it: Harbour" },
            Field.OneOf(TitleIs, ["as given", "untitled", "not known"]),
            Naming.People(Makers, people),
            Field.OneOf(MakersAre, [Naming.Known, Naming.New, Naming.NewPupil, "not known"]),
            Fields.Date(Year),
            Fields.Technique(Technique, techniques, own, "how it is printed: linocut, etching, woodcut"),
            new Field(Note),
        ], form => RecordAsync(desk, form))
        {
            OwnEachTime = [Title, TitleIs, Note],
            About = ["Is a maker not in the address book yet, choose new: they are recorded with the work."],
            Caution = "Record of pupils only what the school's policy and the law where you are allow.",
        };
    }

    public static async Task<Opening?> EditAsync(Desk desk, Work work)
    {
        var (_, techniques, own) = await desk.Store.Do(Known);

        return new Form($"Put {Called.Work(work)} right", [
            new Field(Title, work.Title ?? "") { Form = "as the maker gave it" },
            Fields.Date(Year, work.Year.Text ?? ""),
            Fields.Technique(Technique, techniques, own, "how it is printed, in words", work.Technique ?? ""),
        ], form => PutRightAsync(desk, work, form))
        {
            Name = "Put a work right",
            About = ["This corrects the record where it was mistyped. A field that is emptied stays as it was."],
            OwnEachTime = [Title, Year],
        };
    }

    public static async Task<Opening?> JoinAsync(Desk desk, Work work)
    {
        var (people, _, _) = await desk.Store.Do(Known);

        return new Form($"Name people for {Called.Work(work)}", [
            Field.OneOf(Did, [.. Role.All.Select(role => role.Word).Where(role => role != Role.Maker.Word), Role.Maker.Word]),
            Naming.People(Who, people, isNeeded: true),
            Field.OneOf(TheyAre, [Naming.Known, Naming.New, Naming.NewPupil]),
        ], form => JoinedAsync(desk, work, form)) { Name = "Name people for a work" };
    }

    private static async Task<Saved> RecordAsync(Desk desk, Form form)
    {
        var makers = form[MakersAre] == "not known" ? [] : Naming.Split(form[Makers]);
        NewWork work = new()
        {
            Title = form[Title],
            Untitled = form[TitleIs] == "untitled",
            TitleUnknown = form[TitleIs] == "not known",
            MakerUnknown = form[MakersAre] == "not known",
            Year = Fields.DateOf(form[Year]) ?? RecordedDate.None,
            Technique = form[Technique],
            Note = form[Note],
        };
        Sound(form, makers);
        var recorded = await desk.Store.Do(register =>
        {
            Naming.RecordNew(register, makers, form[MakersAre]);

            return register.LookAround.Work(register.RecordWork.Run(work, makers));
        });

        return new Saved(BenchSaid.Recorded(recorded), new WorkPage(desk, recorded.Id));
    }

    /// <summary>What the register would refuse in the words of its commands is said in those of the form, before anyone new is recorded.</summary>
    private static void Sound(Form form, IReadOnlyList<string> makers)
    {
        if (form[Title] is null && form[TitleIs] == "as given")
        {
            throw BenchRefusals.NoTitle();
        }

        if (makers.Count == 0 && form[MakersAre] != "not known")
        {
            throw BenchRefusals.NoMaker();
        }
    }

    private static async Task<Saved> PutRightAsync(Desk desk, Work work, Form form)
    {
        var (title, technique) = (Changed(form[Title], work.Title), Changed(form[Technique], work.Technique));
        var year = Changed(form[Year], work.Year.Text) is { } typed ? RecordedDate.Read(typed) : null;
        List<string> changed = [.. new[] { title is null ? null : "title", year is null ? null : "year", technique is null ? null : "technique" }.OfType<string>()];

        if (changed.Count == 0)
        {
            return new Saved("Nothing was different, so nothing was changed.");
        }

        var now = await desk.Store.Do(register =>
        {
            register.EditWork.Run(work.Id, title, year, technique, work.V);

            return register.LookAround.Work(work.Id);
        });
        // What was blank before cannot be made blank again by a correction.
        var isPuttable = (title is null || work is { Title: not null, TitleState: "given" }) && (technique is null || work.Technique is not null);

        return new Saved(BenchSaid.PutRight(now, changed))
        {
            Undo = isPuttable ? new Undoing("the correction", () => PutBackAsync(desk, work, now.V, title is not null, year is not null, technique is not null)) : null,
        };
    }

    private static async Task<string> PutBackAsync(Desk desk, Work before, long seen, bool title, bool year, bool technique)
    {
        await desk.Store.Do(register => register.EditWork.Run(before.Id, title ? before.Title : null, year ? before.Year : null, technique ? before.Technique : null, seen));

        return $"{Called.Work(before)} is as it was before.";
    }

    private static async Task<Saved> JoinedAsync(Desk desk, Work work, Form form)
    {
        var who = Naming.Split(form[Who]);
        var joined = await desk.Store.Do(register =>
        {
            Naming.RecordNew(register, who, form[TheyAre]);
            register.JoinWork.Run(work.Id, [.. who.Select(name => new Contributor(form[Did]!, name))]);

            return register.LookAround.Work(work.Id);
        });

        return new Saved(BenchSaid.Joined(joined, who.Count));
    }

    private static string? Changed(string? answer, string? before) => answer == before ? null : answer;

    private static (IReadOnlyList<string> People, IReadOnlyList<string> Techniques, OwnWords Own) Known(Register register)
    {
        var own = register.LookAround.OwnWords();

        // What this register has said before comes first, then the list.
        return (
            [.. register.LookAround.Book().People.Values.Where(person => !person.IsErased).Select(person => person.FullName)],
            [.. register.ListBench.Run().Select(one => one.Technique).OfType<string>().Concat(own.AllTechniques.Select(technique => technique.Name)).Distinct(StringComparer.Ordinal)],
            own);
    }
}
