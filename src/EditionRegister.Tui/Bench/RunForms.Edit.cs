using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Bench;

/// <summary>How a print run is put right, and back as it was.</summary>
internal static partial class RunForms
{
    public static Form Edit(Desk desk, Work work, PrintRun run) => new($"Put print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} right", [
        Fields.Count(Started, Text(run.Started)),
        Fields.Count(Unused, Text(run.Unused)),
        Fields.Count(Spoiled, Text(run.Spoiled)),
        Fields.Count(HeldOut, Text(run.HeldOut)),
        Fields.Paper(Paper, [.. work.Runs.Select(one => one.Paper).OfType<string>().Distinct()], "the paper, as its maker calls it: kozo, 70 g/m², deckle edges, lot 12", run.Paper ?? ""),
        Fields.Date(Printed, run.Printed.Text ?? ""),
        Fields.Size(Image, SizePart.Image, run.ImageWritten ?? Text(run.ImageHeight, run.ImageWidth)),
        Fields.Size(Sheet, SizePart.Sheet, run.SheetWritten ?? Text(run.SheetHeight, run.SheetWidth)),
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
        var (image, sheet) = (Fields.SizeOf(form[Image], SizePart.Image), Fields.SizeOf(form[Sheet], SizePart.Sheet));

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
            ImageHeight = Changed(image?.Size.Height.Micrometres, run.ImageHeight),
            ImageWidth = Changed(image?.Size.Width.Micrometres, run.ImageWidth),
            SheetHeight = Changed(sheet?.Size.Height.Micrometres, run.SheetHeight),
            SheetWidth = Changed(sheet?.Size.Width.Micrometres, run.SheetWidth),
            ImageWritten = image?.Written == run.ImageWritten ? null : image?.Written,
            SheetWritten = sheet?.Written == run.SheetWritten ? null : sheet?.Written,
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
            ImageWritten = made.ImageWritten is null ? null : run.ImageWritten,
            SheetWritten = made.SheetWritten is null ? null : run.SheetWritten,
        };

        return Said(before) == Said(made) ? before : null;
    }

    private static int Said(PrintRunCorrection one) => new object?[]
    {
        one.Started, one.Unused, one.Spoiled, one.HeldOut, one.Paper, one.State, one.Note, one.Printed, one.ImageHeight, one.ImageWidth, one.SheetHeight, one.SheetWidth, one.ImageWritten, one.SheetWritten, one.CutInto, one.MadeOf, one.Ready, one.Posthumous,
    }.Count(value => value is not null);

    private static T? Changed<T>(T? typed, T? before)
        where T : struct => typed.Equals(before) ? null : typed;

    private static string Text(int? count) => count is { } n ? Counted.Figure(n) : "";

    private static string Text(long? height, long? width) =>
        height is >= 1 and <= Length.Largest && width is >= 1 and <= Length.Largest ? $"{new Length(height.Value).Millimetres} x {new Length(width.Value).Millimetres}" : "";
}
