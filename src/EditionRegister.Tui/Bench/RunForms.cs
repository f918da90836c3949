using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>What is counted and measured of a print run, when it is recorded and when it is put right.</summary>
internal static class RunForms
{
    private const string Purpose = "Printed for";
    private const string Paper = "Paper";
    private const string State = "State";
    private const string Printed = "Printed";
    private const string Started = "Sheets started";
    private const string Unused = "Unused";
    private const string Spoiled = "Spoiled";
    private const string Pile = "Counted in the pile";
    private const string HeldOut = "Held out as proofs";
    private const string Image = "Image size";
    private const string Sheet = "Sheet size";
    private const string Place = "Where the pile lies";
    private const string PlaceIs = "That place is";
    private const string Note = "Note";
    private const string Stage = "The sheets are";
    private const string InPile = "in the pile";
    private const string Printing = "still being printed";
    private const string CutInto = "Each cut into";
    private const string MadeOf = "Sheets to one";
    private const string Ready = "Dry from";
    private const string Posthumous = "After the maker's death";
    private const string CancellationProof = "Proof of cancelling";

    public static async Task<Opening?> NewAsync(Desk desk, long work)
    {
        var (printed, papers, places) = await desk.Store.Do(register =>
        {
            var book = register.LookAround.Book();
            var found = register.LookAround.Work(work);

            return (found, found.Runs.Select(run => run.Paper).OfType<string>().Distinct().ToList(), book.Places.Keys.Select(id => book.PathOf(id)).Order(StringComparer.Ordinal).ToList());
        });

        return new Form($"A print run of {Called.Work(printed)}", [
            Field.OneOf(Stage, [InPile, Printing]),
            Fields.Count(Started),
            Fields.Count(Unused),
            Fields.Count(Spoiled),
            Fields.Count(Pile),
            Fields.Count(HeldOut),
            Fields.Known(Paper, papers, "the paper, as its maker calls it"),
            Fields.Date(Printed),
            Fields.Size(Image),
            Fields.Size(Sheet),
            new Field(State) { Form = "the state of the block or plate, where it has several: II" },
            Field.OneOf(Purpose, ["edition", "proofing", "restrike", "unknown"]),
            Fields.Known(Place, places, "Studio › Drawer 1, or empty: it is with the maker"),
            Field.OneOf(PlaceIs, [Naming.Known, Naming.New]),
            Fields.Date(Ready),
            Fields.Count(CutInto, least: 1),
            Fields.Count(MadeOf, least: 1),
            Field.OneOf(Posthumous, ["not said", "no", "yes", "unknown"]),
            Field.YesNo(CancellationProof, false),
            new Field(Note),
        ], form => RecordAsync(desk, work, form))
        {
            Name = "A print run",
            About = ["Started = unused + spoiled + the pile, which is worked out if left empty.", "Still being printed: say the sheets started; passes follow one by one."],
            OwnEachTime = [Started, Unused, Spoiled, Pile, HeldOut, Printed, State, Ready, CancellationProof, Note],
        };
    }

    public static Form Edit(Desk desk, Work work, PrintRun run) => new($"Put print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} right", [
        Fields.Count(Started, Text(run.Started)),
        Fields.Count(Unused, Text(run.Unused)),
        Fields.Count(Spoiled, Text(run.Spoiled)),
        Fields.Count(HeldOut, Text(run.HeldOut)),
        Fields.Known(Paper, [.. work.Runs.Select(one => one.Paper).OfType<string>().Distinct()], "the paper, as its maker calls it", run.Paper ?? ""),
        Fields.Date(Printed, run.Printed.Text ?? ""),
        Fields.Size(Image, Text(run.ImageHeight, run.ImageWidth)),
        Fields.Size(Sheet, Text(run.SheetHeight, run.SheetWidth)),
        new Field(State, run.State ?? "") { Form = "the state of the block or plate: II" },
        Fields.Date(Ready, run.Ready.Text ?? ""),
        Fields.Count(CutInto, Text(run.CutInto), least: 1),
        Fields.Count(MadeOf, Text(run.MadeOf), least: 1),
        Field.OneOf(Posthumous, run.Posthumous is null ? ["not said", "no", "yes", "unknown"] : ["no", "yes", "unknown"], run.Posthumous ?? "not said"),
        new Field(Note, run.Note ?? ""),
    ], form => PutRightAsync(desk, work, run, form))
    {
        Name = "Put a print run right",
        About = [$"On record: {RunBalance.Of(work, run)}.", "The sheets must balance again. A field that is emptied stays as it was."],
        OwnEachTime = [Started, Unused, Spoiled, HeldOut, Printed, State, Note],
    };

    private static async Task<Saved> RecordAsync(Desk desk, long work, Form form)
    {
        if (form[Started] is null && form[Pile] is null && form[Stage] != Printing)
        {
            throw BenchRefusals.NothingCounted();
        }

        var (image, sheet) = (Fields.SizeOf(form[Image]), Fields.SizeOf(form[Sheet]));
        NewPrintRun run = new()
        {
            Purpose = form[Purpose]!,
            Paper = form[Paper],
            State = form[State],
            Printed = Fields.DateOf(form[Printed]) ?? RecordedDate.None,
            Started = Fields.Whole(form[Started]),
            Spoiled = Fields.Whole(form[Spoiled]),
            Unused = Fields.Whole(form[Unused]),
            HeldOut = Fields.Whole(form[HeldOut]),
            Pile = Fields.Whole(form[Pile]),
            ImageHeight = image?.Height.Micrometres,
            ImageWidth = image?.Width.Micrometres,
            SheetHeight = sheet?.Height.Micrometres,
            SheetWidth = sheet?.Width.Micrometres,
            Note = form[Note],
            CutInto = Fields.Whole(form[CutInto]),
            MadeOf = Fields.Whole(form[MadeOf]),
            Ready = Fields.DateOf(form[Ready]) ?? RecordedDate.None,
            Posthumous = form[Posthumous] == "not said" ? null : form[Posthumous],
            IsCancellationProof = form.IsYes(CancellationProof),
            IsUnderWay = form[Stage] == Printing,
        };
        var recorded = await desk.Store.Do(register =>
        {
            Naming.RecordNewPlace(register, form[Place], form[PlaceIs]);
            register.RecordPrintRun.Run(work, run, form[Place]);

            return register.LookAround.Work(work);
        });

        return recorded.Runs[^1] is var made && run.IsUnderWay ? new Saved(UnderWay(recorded, made), new RunPage(desk, work, made.Ordinal)) : new Saved(BenchSaid.Recorded(recorded, made));
    }

    private static async Task<Saved> PutRightAsync(Desk desk, Work work, PrintRun run, Form form)
    {
        var correction = Correction(form, run);

        if (correction == new PrintRunCorrection())
        {
            return new Saved("Nothing was different, so nothing was changed.");
        }

        var now = await desk.Store.Do(register =>
        {
            register.EditPrintRun.Run(work.Id, run.Ordinal, correction, run.V);

            return register.LookAround.Work(work.Id);
        });

        return new Saved(BenchSaid.PutRight(now, now.Runs.First(one => one.Id == run.Id)))
        {
            Undo = Before(correction, run) is { } before ? new Undoing("the correction", async () =>
            {
                await desk.Store.Do(register => register.EditPrintRun.Run(work.Id, run.Ordinal, before));

                return $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} is as it was before.";
            }) : null,
        };
    }

    /// <summary>Only what differs from what is on record.</summary>
    private static PrintRunCorrection Correction(Form form, PrintRun run)
    {
        var (image, sheet) = (Fields.SizeOf(form[Image]), Fields.SizeOf(form[Sheet]));

        return new PrintRunCorrection
        {
            Started = Changed(Fields.Whole(form[Started]), run.Started),
            Unused = Changed(Fields.Whole(form[Unused]), run.Unused),
            Spoiled = Changed(Fields.Whole(form[Spoiled]), run.Spoiled),
            HeldOut = Changed(Fields.Whole(form[HeldOut]), run.HeldOut),
            Paper = form[Paper] == run.Paper ? null : form[Paper],
            State = form[State] == run.State ? null : form[State],
            Note = form[Note] == run.Note ? null : form[Note],
            CutInto = Changed(Fields.Whole(form[CutInto]), run.CutInto),
            MadeOf = Changed(Fields.Whole(form[MadeOf]), run.MadeOf),
            Ready = form[Ready] is { } ready && ready != run.Ready.Text ? RecordedDate.Read(ready) : null,
            Posthumous = form[Posthumous] == run.Posthumous || form[Posthumous] == "not said" ? null : form[Posthumous],
            Printed = form[Printed] is { } printed && printed != run.Printed.Text ? RecordedDate.Read(printed) : null,
            ImageHeight = Changed(image?.Height.Micrometres, run.ImageHeight),
            ImageWidth = Changed(image?.Width.Micrometres, run.ImageWidth),
            SheetHeight = Changed(sheet?.Height.Micrometres, run.SheetHeight),
            SheetWidth = Changed(sheet?.Width.Micrometres, run.SheetWidth),
        };
    }

    /// <summary>What puts a correction back; null where something was blank before, as nothing makes it blank again.</summary>
    private static PrintRunCorrection? Before(PrintRunCorrection made, PrintRun run)
    {
        PrintRunCorrection before = new()
        {
            Started = made.Started is null ? null : run.Started,
            Unused = made.Unused is null ? null : run.Unused,
            Spoiled = made.Spoiled is null ? null : run.Spoiled,
            HeldOut = made.HeldOut is null ? null : run.HeldOut,
            Paper = made.Paper is null ? null : run.Paper,
            State = made.State is null ? null : run.State,
            Note = made.Note is null ? null : run.Note,
            CutInto = made.CutInto is null ? null : run.CutInto ?? 1,
            MadeOf = made.MadeOf is null ? null : run.MadeOf ?? 1,
            Ready = made.Ready is null || !run.Ready.IsKnown ? null : run.Ready,
            Posthumous = made.Posthumous is null ? null : run.Posthumous,
            Printed = made.Printed is null ? null : run.Printed,
            ImageHeight = made.ImageHeight is null ? null : run.ImageHeight,
            ImageWidth = made.ImageWidth is null ? null : run.ImageWidth,
            SheetHeight = made.SheetHeight is null ? null : run.SheetHeight,
            SheetWidth = made.SheetWidth is null ? null : run.SheetWidth,
        };

        return Said(before) == Said(made) ? before : null;
    }

    private static int Said(PrintRunCorrection one) => new object?[]
    {
        one.Started, one.Unused, one.Spoiled, one.HeldOut, one.Paper, one.State, one.Note, one.Printed, one.ImageHeight, one.ImageWidth, one.SheetHeight, one.SheetWidth, one.CutInto, one.MadeOf, one.Ready, one.Posthumous,
    }.Count(value => value is not null);

    // The way there is a command on the command line, and a key here.
    private static string UnderWay(Work work, PrintRun run) =>
        $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} is under way: {Counted.Sheets(run.Started ?? 0)} started. p records its passes.";

    private static T? Changed<T>(T? typed, T? before)
        where T : struct => typed.Equals(before) ? null : typed;

    private static string Text(int? count) => count is { } n ? Counted.Figure(n) : "";

    private static string Text(long? height, long? width) =>
        height is >= 1 and <= Length.Largest && width is >= 1 and <= Length.Largest ? $"{new Length(height.Value).Millimetres} x {new Length(width.Value).Millimetres}" : "";
}
