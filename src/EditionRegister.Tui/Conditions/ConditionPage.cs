using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Conditions;

/// <summary>Every condition report of one sheet, newest first, with what is new since it went out.</summary>
internal sealed class ConditionPage(Desk desk, string code) : TextPage
{
    private const string Report = "Report";
    private const string File = "File";

    private ImpressionSeen? _seen;

    public override string Title => "Condition";

    public override string Explains =>
        "Every condition report of this sheet, newest first: when and why it was examined, by whom, and what was seen where. A report of coming back says what is new since the sheet went out. "
        + "f writes one as a paper with room for two signatures, for a loan. v shows what the words mean, and takes words of your own.";

    public override IReadOnlyList<KeyDeed> Keys => _seen is null ? [] :
    [
        .. _seen.Impression.ConditionReports.Count > 0 ? [KeyDeed.Opens("f", "write a paper", FileForm) with { Explained = "Writes a report to a file, with room for two signatures." }] : (KeyDeed[])[],
        new("x", "examine", async () => await ExamineForm.OfAsync(desk, await SheetsAtHand.ReadAsync(desk, new ChosenSheets(UseCases.Choosing.ImpressionChoice.OfCode(code), code)))),
        KeyDeed.Opens("v", "what words mean", () => new TermsPage(desk)) with { Explained = "Lists every word for what can be the matter with a sheet, and what it means." },
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public static Opening? Of(Desk desk, SheetsAtHand sheets)
    {
        if (sheets.IsOne)
        {
            return new ConditionPage(desk, sheets.First.Sheet.ShownCode);
        }

        desk.Say("Condition reports are read one sheet at a time: take the marks away, and put the cursor on one.", Tone.Warning);

        return null;
    }

    public override IReadOnlyList<Line> Head(int width) => _seen is not { } seen ? [] :
    [
        Line.Of($"{Called.Work(seen.Work)} {seen.Work.NumberOf(seen.Impression)}", Tone.Strong).Then($"   {seen.Impression.ShownCode}", Tone.Key),
        .. Wrap.Of($"Condition now: {seen.Impression.Condition ?? "not said"}", width).Select(line => Line.Of(line)),
        Line.Empty,
    ];

    public override IReadOnlyList<Line> Text(int width) => _seen is not { } seen ? [] : seen.Impression.ConditionReports.Count == 0
        ? [Line.Of("No report yet. x examines it.", Tone.Quiet)]
        : [.. seen.Impression.ConditionReports.Reverse().SelectMany(report => Lines(seen.Work, seen.Impression, report, width)), .. Wrap.Of(ConditionSaid.Caution, width).Select(line => Line.Of(line, Tone.Quiet))];

    public override async Task RefreshAsync() => _seen = await desk.Store.Do(register => register.LookAround.Impression(code));

    private static IEnumerable<Line> Lines(Work work, Impression sheet, Domain.Conditions.ConditionReport report, int width)
    {
        var remarks = ConditionShown.Remarks(work, report);

        return
        [
            .. FactLines.Of(ConditionShown.Facts(work, report), width),
            .. remarks.Rows.Count > 0 ? TableLines.Of(remarks, width) : [],
            .. ConditionShown.Compared(work, sheet, report) is { } compared ? Wrap.Of(compared, width).Select(line => Line.Of(line, Tone.Strong)) : [],
            Line.Empty,
        ];
    }

    private Form FileForm()
    {
        var reports = _seen!.Impression.ConditionReports;

        return new Form(
            "Write a condition report",
            [
                Field.OneOf(Report, [.. reports.Reverse().Select(report => Counted.Figure(report.Ordinal))]),
                new Field(File, $"condition-{code}.txt") { IsNeeded = true, Form = "a text file to print", Wrong = TypedPath.Wrong },
            ],
            async form =>
            {
                var path = TypedPath.Full(form[File]!);
                await desk.Store.Do(register => register.WriteConditionSheet.Run(code, path, Fields.Whole(form[Report])));
                desk.Written.Add([path]);

                return new Saved($"Condition report written: {path}.");
            })
        {
            OwnEachTime = [Report, File],
        };
    }
}
