using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked of a block, plate, stone or screen: when it is recorded, and what becomes of it.</summary>
internal static class MatrixForms
{
    private const string What = "What it is";
    private const string Material = "Material";
    private const string Reduction = "Reduction";
    private const string Made = "Made";
    private const string Became = "What became of it";
    private const string Day = "Date";
    private const string Note = "Note";
    private const string Part = "Part of the image";
    private const string Place = "Place";
    private const string PlaceIs = "That place is";
    private const string Proof = "Proof of it";
    private const string StateName = "State";
    private const string Reached = "Reached";
    private const string Mistake = "The fate on record is a mistake";

    private static readonly string[] Materials = ["linoleum", "plywood", "pear wood", "boxwood", "copper", "zinc", "limestone", "silk screen", "paper"];

    public static Form New(Desk desk, Work work) => new($"What {Called.Work(work)} is printed from", [
        Field.OneOf(What, MatrixDeeds.Kinds),
        new Field(Part) { Form = "where there are several: key, sky, left half" },
        Fields.Known(Material, Materials, "what it is made of: linoleum, copper"),
        Field.OneOf(Reduction, ["no", "yes", "unknown"]),
        Fields.Date(Made),
        Fields.Known(Place, [.. work.Book.Places.Keys.Select(id => work.Book.PathOf(id)).Order(StringComparer.Ordinal)], "Studio › Block shelf, where it lies"),
        Field.OneOf(PlaceIs, [Naming.Known, Naming.New]),
    ], form => RecordAsync(desk, work, form))
    {
        Name = "What a work is printed from",
        About = ["A reduction is cut away in printing, colour by colour, and can never be printed again."],
        OwnEachTime = [Part],
    };

    public static Form State(Desk desk, Work work, Matrix matrix) => new($"A state of {char.ToLowerInvariant(MatrixText.Of(work, matrix)[0])}{MatrixText.Of(work, matrix)[1..]}", [
        new Field(StateName) { Form = $"what it is called: {(matrix.States.Count == 0 ? "I" : "II, or 2nd state")}", IsNeeded = true },
        Fields.Today(Reached, desk.Today),
        new Field(Note) { Form = "what was cut, bitten or reworked" },
    ], form => ReachAsync(desk, work, matrix, form))
    {
        Name = "A state of a block or plate",
        About = matrix.States.Count == 0 ? [] : [$"On record: {string.Join(", ", matrix.States.Select(state => state.Name))}."],
        OwnEachTime = [StateName, Reached, Note],
    };

    public static Form Fate(Desk desk, Work work, Matrix matrix)
    {
        var isStated = matrix.Fate is not ("undecided" or "unknown");

        return new Form($"What became of {char.ToLowerInvariant(MatrixText.Of(work, matrix)[0])}{MatrixText.Of(work, matrix)[1..]}", [
            Field.OneOf(Became, [.. MatrixDeeds.Fates.Where(fate => fate != "undecided" || isStated).Where(fate => fate != "cut-away-in-printing" || matrix.IsReduction).Select(Called.Plain)]),
            Fields.Today(Day, desk.Today),
            new Field(Note) { Form = "the story, in words" },
            new Field(Proof) { Form = "the code of the impression that proves it" },
            .. isStated ? [Field.YesNo(Mistake, false)] : Array.Empty<Field>(),
        ], form => StateAsync(desk, work, matrix, form))
        {
            Name = "What became of a block or plate",
            About = isStated ? [$"On record: {Called.Plain(matrix.Fate)} ({matrix.FateDate})."] : [],
            Caution = "What was cancelled, cut away, cut up or regrained never prints again, and certificates say so. State it when it is done, not before.",
        };
    }

    private static async Task<Saved> RecordAsync(Desk desk, Work work, Form form)
    {
        var made = Fields.DateOf(form[Made]) ?? RecordedDate.None;
        var (now, matrix) = await desk.Store.Do(register =>
        {
            Naming.RecordNewPlace(register, form[Place], form[PlaceIs]);
            var id = register.RecordMatrix.Run(
                work.Id, new NewMatrix { What = form[What]!, Part = form[Part], Material = form[Material], Reduction = form[Reduction]!, Made = made }, form[Place]);
            var found = register.LookAround.Work(work.Id);

            return (found, found.Matrices.First(one => one.Id == id));
        });

        return new Saved(BenchSaid.Recorded(now, matrix));
    }

    private static async Task<Saved> ReachAsync(Desk desk, Work work, Matrix matrix, Form form)
    {
        var reached = Fields.DateOf(form[Reached]) ?? RecordedDate.None;
        var now = await desk.Store.Do(register =>
        {
            register.ReachMatrixState.Run(work.Id, Counted.Figure(matrix.Id), form[StateName]!, reached, form[Note]);

            return register.LookAround.Work(work.Id);
        });
        var after = now.Matrices.First(one => one.Id == matrix.Id);

        return new Saved(BenchSaid.Reached(now, after, after.NewestState!));
    }

    private static async Task<Saved> StateAsync(Desk desk, Work work, Matrix matrix, Form form)
    {
        var fate = MatrixDeeds.Fates.First(word => Called.Plain(word) == form[Became]);
        var isMistake = form.Fields.Any(field => field.Label == Mistake) && form.IsYes(Mistake);
        var date = Fields.DateOf(form[Day]) ?? RecordedDate.None;
        await desk.Store.Do(register => register.StateMatrixFate.Run(work.Id, matrix.Id, fate, date, form[Note], isMistake, form[Proof]));
        var now = await desk.Store.Do(register => register.LookAround.Work(work.Id));

        return new Saved(BenchSaid.FateStated(now, now.Matrices.First(one => one.Id == matrix.Id)))
        {
            Undo = new Undoing("the fate", async () =>
            {
                await desk.Store.Do(register => register.StateMatrixFate.Run(work.Id, matrix.Id, matrix.Fate, matrix.FateDate, matrix.FateNote, correct: true));

                return $"{MatrixText.Of(work, matrix)} is {Called.Plain(matrix.Fate)} again.";
            }),
        };
    }
}
