using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked of a pass: what was printed from what, and what came of the sheets. F4 fills in the last pass, so that only what is different is typed.</summary>
internal static partial class PassForm
{
    private const string Name = "a pass";
    private const string Blocks = "Printed from";
    private const string Colours = "Colours";
    private const string Ink = "Ink";
    private const string Manner = "They stand";
    private const string Day = "Done";
    private const string Who = "Who";
    private const string In = "Sheets in";
    private const string Added = "Joined late";
    private const string Out = "Sheets out";
    private const string Spoiled = "Spoiled";
    private const string HeldOut = "Held out as proofs";
    private const string Proofs = "Which were held out";
    private const string Through = "Went through";
    private const string Which = "Which went through";
    private const string Kind = "What was done";
    private const string Side = "Side";
    private const string AtBench = "Called";
    private const string MakeReady = "Make-ready";
    private const string Note = "Note";

    private static readonly string[] OwnEachTime = [In, Added, Out, Spoiled, HeldOut, Proofs, Which, MakeReady, Day, Note];

    public static async Task<Opening?> NewAsync(Desk desk, Work work, PrintRun run)
    {
        var people = await PeopleAsync(desk);
        var atHand = PassBalance.AtHand(run);

        // The last pass on record is what "as last time" means, also after the program was started anew.
        if (work.Runs.OrderBy(one => one.Ordinal).SelectMany(one => one.Passes).LastOrDefault() is { } last)
        {
            desk.Answers.Remember(Name, Fill(work, last).ToDictionary(field => field.Label, field => field.Text, StringComparer.Ordinal));
        }

        return new Form($"Pass {Counted.Figure(run.Passes.Count == 0 ? 1 : run.Passes[^1].Ordinal + 1)} of print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)}", FieldsOf(work, people, null, desk.Today), form => RecordAsync(desk, work, run, form))
        {
            Name = Name,
            About = [$"{(atHand is { } left ? $"{Counted.Sheets(left)} at hand. " : "")}Counts that follow from the others may stay empty; F4: as last time, then change the ink."],
            OwnEachTime = OwnEachTime,
        };
    }

    public static async Task<Opening?> EditAsync(Desk desk, Work work, PrintRun run, Pass pass)
    {
        var people = await PeopleAsync(desk);

        return new Form($"Put {char.ToLowerInvariant(PassText.Called(work, run, pass)[0])}{PassText.Called(work, run, pass)[1..]} right", FieldsOf(work, people, pass, desk.Today), form => PutRightAsync(desk, work, run, pass, form))
        {
            Name = "put a pass right",
            About = [$"On record: {PassText.Of(work, pass)}.", "A field that is emptied stays as it was; the sheets must balance again."],
            OwnEachTime = [.. FieldsOf(work, people, pass, desk.Today).Select(field => field.Label)],
        };
    }

    private static Task<List<string>> PeopleAsync(Desk desk) =>
        desk.Store.Do(register => register.LookAround.Book().People.Values.Where(person => !person.IsErased).Select(person => person.FullName).ToList());

    private static IReadOnlyList<Field> FieldsOf(Work work, IReadOnlyList<string> people, Pass? pass, DateOnly today)
    {
        var given = pass is null ? [] : Fill(work, pass).ToDictionary(field => field.Label, field => field.Text, StringComparer.Ordinal);
        var blocks = work.Matrices.Select(Named).ToList();
        var who = Naming.People(Who, people);

        return
        [
            new Field(Blocks, Given(Blocks)) { Form = blocks.Count == 0 ? "no block is recorded yet" : $"such as {blocks[0]}, or {blocks[0]}=II; several with ;", Known = typed => Several(blocks, typed) },
            new Field(Colours, Given(Colours)) { Form = "red; or blue=oil ink; grey for several" },
            new Field(Ink, Given(Ink)) { Form = "the ink of the only colour" },
            Field.OneOf(Manner, PassKinds.Manners.Select(PassKinds.Plain).ToList(), pass is null ? PassKinds.Plain("flat") : Given(Manner)),
            Fields.Count(In, Given(In)),
            Fields.Count(Out, Given(Out)),
            new Field(Spoiled, Given(Spoiled)) { Form = "slur=1; crease=1, or a count alone" },
            new Field(HeldOut, Given(HeldOut)) { Form = "progressive=1; state, trial, colour-trial" },
            new Field(Who, Given(Who)) { Form = who.Form, Known = who.Known },
            pass is null ? Fields.Today(Day, today) : Fields.Date(Day, Given(Day)),
            Field.OneOf(Kind, PassKinds.All.Select(PassKinds.Plain).ToList(), pass is null ? null : Given(Kind)),
            Field.OneOf(Through, ["all", "some"], pass is null ? null : Given(Through)),
            Fields.Ranges(Which, Given(Which), "places in the pile or codes: 1-4"),
            Fields.Ranges(Proofs, "", "places in the pile or codes: 19"),
            Fields.Count(Added, Given(Added)),
            Fields.Count(MakeReady, Given(MakeReady)),
            Field.OneOf(Side, PassKinds.Sides, pass is null ? null : Given(Side)),
            new Field(AtBench, Given(AtBench)) { Form = "as you call it at the bench" },
            new Field(Note, Given(Note)),
        ];

        string Given(string label) => given.GetValueOrDefault(label, "");
    }

    private static async Task<Saved> RecordAsync(Desk desk, Work work, PrintRun run, Form form)
    {
        var typed = Typed(form, _ => true);
        var (now, ordinal) = await desk.Store.Do(register =>
        {
            var recorded = register.RecordPass.Run(work.Id, run.Ordinal, typed);

            return (register.LookAround.Work(work.Id), recorded);
        });
        var after = now.Runs.First(one => one.Id == run.Id);

        return new Saved(BenchSaid.Recorded(now, after, after.Passes.First(one => one.Ordinal == ordinal)))
        {
            Undo = new Undoing("the pass", async () =>
            {
                var taken = await desk.Store.Do(register =>
                {
                    register.TakePassBack.Run(work.Id, run.Ordinal, ordinal);

                    return register.LookAround.Work(work.Id);
                });

                return BenchSaid.TakenBack(taken, taken.Runs.First(one => one.Id == run.Id), ordinal);
            }),
        };
    }

    private static async Task<Saved> PutRightAsync(Desk desk, Work work, PrintRun run, Pass pass, Form form)
    {
        if (!form.IsTouched)
        {
            return new Saved("Nothing was different, so nothing was changed.");
        }

        var typed = Typed(form, field => field.Text != field.AsGiven);
        var now = await desk.Store.Do(register =>
        {
            register.EditPass.Run(work.Id, run.Ordinal, pass.Ordinal, typed, pass.V);

            return register.LookAround.Work(work.Id);
        });
        var after = now.Runs.First(one => one.Id == run.Id);

        return new Saved(BenchSaid.PutRight(now, after, after.Passes.First(one => one.Id == pass.Id)));
    }

    private static IReadOnlyList<string> Several(IReadOnlyList<string> known, string typed)
    {
        var before = typed.LastIndexOf(';') + 1;
        var lead = before == 0 ? "" : typed[..before] + " ";

        return [.. Fields.Matching(known, typed[before..].TrimStart()).Select(name => lead + name)];
    }
}
