using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>What is counted and measured of a print run, when it is recorded and when it is put right.</summary>
internal static partial class RunForms
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
            Fields.Paper(Paper, papers, "the paper, as its maker calls it: kozo, 70 g/m², deckle edges, lot 12"),
            Fields.Date(Printed),
            Fields.Size(Image, SizePart.Image),
            Fields.Size(Sheet, SizePart.Sheet),
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

    private static async Task<Saved> RecordAsync(Desk desk, long work, Form form)
    {
        if (form[Started] is null && form[Pile] is null && form[Stage] != Printing)
        {
            throw BenchRefusals.NothingCounted();
        }

        var (image, sheet) = (Fields.SizeOf(form[Image], SizePart.Image), Fields.SizeOf(form[Sheet], SizePart.Sheet));
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
            ImageHeight = image?.Size.Height.Micrometres,
            ImageWidth = image?.Size.Width.Micrometres,
            SheetHeight = sheet?.Size.Height.Micrometres,
            SheetWidth = sheet?.Size.Width.Micrometres,
            ImageWritten = image?.Written,
            SheetWritten = sheet?.Written,
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

    // The way there is a command on the command line, and a key here.
    private static string UnderWay(Work work, PrintRun run) =>
        $"Print run {Counted.Figure(run.Ordinal)} of {Called.Work(work)} is under way: {Counted.Sheets(run.Started ?? 0)} started. p records its passes.";
}
