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

    public static async Task<Opening?> NewAsync(Desk desk, long work)
    {
        var (printed, papers, places) = await desk.Store.Do(register =>
        {
            var book = register.LookAround.Book();
            var found = register.LookAround.Work(work);

            return (found, found.Runs.Select(run => run.Paper).OfType<string>().Distinct().ToList(), book.Places.Keys.Select(id => book.PathOf(id)).Order(StringComparer.Ordinal).ToList());
        });

        return new Form($"A print run of {Called.Work(printed)}", [
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
            new Field(Note),
        ], form => RecordAsync(desk, work, form))
        {
            Name = "A print run",
            About = ["Started = unused + spoiled + the pile, which is worked out if left empty."],
            OwnEachTime = [Started, Unused, Spoiled, Pile, HeldOut, Printed, State, Note],
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
        new Field(Note, run.Note ?? ""),
    ], form => PutRightAsync(desk, work, run, form))
    {
        Name = "Put a print run right",
        About = [$"On record: {RunBalance.Of(work, run)}.", "The sheets must balance again. A field that is emptied stays as it was."],
        OwnEachTime = [Started, Unused, Spoiled, HeldOut, Printed, State, Note],
    };

    private static async Task<Saved> RecordAsync(Desk desk, long work, Form form)
    {
        if (form[Started] is null && form[Pile] is null)
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
        };
        var recorded = await desk.Store.Do(register =>
        {
            Naming.RecordNewPlace(register, form[Place], form[PlaceIs]);
            register.RecordPrintRun.Run(work, run, form[Place]);

            return register.LookAround.Work(work);
        });

        return new Saved(BenchSaid.Recorded(recorded, recorded.Runs[^1]));
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
        one.Started, one.Unused, one.Spoiled, one.HeldOut, one.Paper, one.State, one.Note, one.Printed, one.ImageHeight, one.ImageWidth, one.SheetHeight, one.SheetWidth,
    }.Count(value => value is not null);

    private static T? Changed<T>(T? typed, T? before)
        where T : struct => typed.Equals(before) ? null : typed;

    private static string Text(int? count) => count is { } n ? Counted.Figure(n) : "";

    private static string Text(long? height, long? width) =>
        height is >= 1 and <= Length.Largest && width is >= 1 and <= Length.Largest ? $"{new Length(height.Value).Millimetres} x {new Length(width.Value).Millimetres}" : "";
}
