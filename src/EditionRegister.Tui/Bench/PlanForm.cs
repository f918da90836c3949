using EditionRegister.Domain.Planning;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Planning;

namespace EditionRegister.Tui.Bench;

/// <summary>What is asked before sheets are started: how many good ones, through how many passes, out of which paper.</summary>
internal static class PlanForm
{
    private const double Hundredths = 10_000;

    private const string Good = "Good sheets wanted";
    private const string Passes = "Passes";
    private const string Keep = "A pass keeps";
    private const string Sure = "How sure";
    private const string Paper = "Full sheet";
    private const string Piece = "Piece to print on";
    private const string Grain = "Grain along";
    private const string SheetGrain = "Grain of the sheet";
    private const string Deckle = "Keep a deckle edge";

    public static async Task<Opening?> OfAsync(Desk desk)
    {
        var learned = await desk.Store.Do(register => register.PlanSheets.Learned());

        return new Form("Plan sheets and paper", [
            Needed(Fields.Count(Good, least: 1)),
            Needed(Fields.Count(Passes, least: 1)),
            Fields.Share(Keep),
            Fields.Share(Sure, "95"),
            Fields.Size(Paper, SizePart.Sheet),
            Fields.Size(Piece, SizePart.Sheet),
            Field.OneOf(Grain, ["either side of a piece", "its long side", "its short side"]),
            Field.OneOf(SheetGrain, ["long side", "short side"]),
            Field.YesNo(Deckle, false),
        ], form => PlanAsync(desk, form))
        {
            About =
            [
                learned is { } rate
                    ? $"Left empty, a pass keeps what the {Counted.Of(rate.Passes, "pass", "passes")} on record kept: {PlanText.Percent(rate.Share)}."
                    : "No pass has its sheets counted yet, so say what a pass keeps, such as 97: by a rule of the trade 3 in 100 are spoiled each time.",
                "Nothing is recorded by this.",
            ],
        };
    }

    private static async Task<Saved> PlanAsync(Desk desk, Form form)
    {
        double? keep = Fields.Hundredth(form[Keep]) is { } share ? share / Hundredths : null;
        var sure = (Fields.Hundredth(form[Sure]) ?? 9_500) / Hundredths;
        var planned = await desk.Store.Do(register => register.PlanSheets.Run(Fields.Whole(form[Good])!.Value, Fields.Whole(form[Passes])!.Value, keep, sure));
        var (paper, piece) = (Fields.SizeOf(form[Paper], SizePart.Sheet)?.Size, Fields.SizeOf(form[Piece], SizePart.Sheet)?.Size);
        var pieces = paper is null || piece is null ? null : PaperPieces.Of(paper, piece, Side(form[SheetGrain])!, Side(form[Grain]), 0, form.IsYes(Deckle));

        return new Saved(PlanText.Answer(planned.Plan), Page(planned, pieces, form.IsYes(Deckle)));
    }

    private static TextPageOf Page(SheetsPlanned planned, PaperPieces? pieces, bool keepsDeckle) => new(
        "A plan",
        "How many sheets to start. Each sheet is taken to come through a pass or not on its own; the table shows how sure it is that enough are good, for a few numbers around the answer. "
        + "Where the share was learned from your passes, a second answer is given for the lower end of what they leave possible.",
        width => Lines(planned, pieces, keepsDeckle, width));

    private static IReadOnlyList<Line> Lines(SheetsPlanned planned, PaperPieces? pieces, bool keepsDeckle, int width)
    {
        var plan = planned.Plan;
        ShownTable table = new(
            "Sheets:",
            [new ShownColumn("start", true), new ShownColumn("enough good", true)],
            [.. plan.Rows.Select(row => (string[])[Counted.Figure(row.Sheets), PlanText.Probability(row.Probability)])]);

        return
        [
            .. Wrap.Of(PlanText.Head(plan), width).Select(line => (Line)line),
            Line.Empty,
            .. TableLines.Of(table, width),
            Line.Empty,
            Line.Of(PlanText.Answer(plan), Tone.Good),
            .. PlanText.Learned(planned).SelectMany(sentence => Wrap.Of(sentence, width)).Select(line => (Line)line),
            .. pieces is null ? [] : Wrap.Of(PlanText.Paper(pieces, planned.Safer?.Start ?? plan.Start, keepsDeckle), width).Select(line => (Line)line),
        ];
    }

    private static string? Side(string? answer) => answer is null || answer.StartsWith("either", StringComparison.Ordinal) ? null
        : answer.Contains("long", StringComparison.Ordinal) ? "long"
        : "short";

    private static Field Needed(Field field) => new(field.Label, field.Text) { Form = field.Form, Wrong = field.Wrong, IsNeeded = true };
}
