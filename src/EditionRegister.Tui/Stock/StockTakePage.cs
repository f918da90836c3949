using EditionRegister.Domain.Stock;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Tui.Stock;

/// <summary>One stock-take, delivery or return: what was found, what is open, and what settles it.</summary>
internal sealed class StockTakePage(Desk desk, long id) : ListPage
{
    private static readonly ListColumn[] Columns = [new("came to", 8), new("code", 9), new("what", 19, Stretch: 2), new("now", 14, Stretch: 1), new("proposed", 19)];

    private StockTakeSeen? _seen;
    private IReadOnlyList<StockLineSeen> _lines = [];

    public override string Title => _seen is null ? $"Stock-take {Counted.Figure(id)}" : $"{Called.Plain(_seen.Take.Occasion)} {Counted.Figure(id)}";

    public override string Explains =>
        "What was found, line by line, what does not agree first. Where something is proposed, y accepts it for the line the cursor is on: a stranger is put away where it was found, "
        + "of what is missing nobody knows where it is from then on. What you do not accept stays as it is; look for a missing sheet first. l accepts everything that is open, after asking.";

    public override Listing Rows => new(Columns, _lines.Count, row => Cells(_lines[row])) { ToneOf = row => _lines[row].IsOpen ? Tone.Warning : Tone.Plain };

    public override string Empty => "This stock-take is not in the register.";

    public override IReadOnlyList<KeyDeed> Keys => _seen is null ? [] :
    [
        .. Here is { IsOpen: true } open ? [new KeyDeed("y", "accept", () => AcceptAsync(open)) { Explained = "Accepts what is proposed for this line." }] : (KeyDeed[])[],
        .. _seen.Open > 1 ? [KeyDeed.Opens("l", "accept all", AskForAll) with { Explained = "Accepts everything that is proposed and open, after asking." }] : (KeyDeed[])[],
        .. Here?.Thing?.Impression is not null ? [KeyDeed.Opens("Enter", "open the sheet", () => new ImpressionPage(desk, Here.Code))] : (KeyDeed[])[],
    ];

    private StockLineSeen? Here => _lines.Count > 0 ? _lines[Current] : null;

    public override IReadOnlyList<Line> Head(int width) => _seen is not { } seen ? [] :
    [
        .. Wrap.Of($"{StockSaid.Called(seen)}: {StockSaid.Counts(seen)}; {StockSaid.Open(seen)}.", width).Select(line => Line.Of(line, Tone.Strong)),
        .. seen.By is { } by ? [Line.Fact("Counted by", by, 12)] : (Line[])[],
        .. seen.Take.Note is { } note ? Wrap.Of(note, width - 12).Take(2).Select((line, at) => Line.Fact(at == 0 ? "Note" : "", line, 12)) : [],
        Line.Empty,
    ];

    public override IReadOnlyList<Line> Foot(int width) => Here is { } line
        ? [Line.Empty, .. Wrap.Of($"{line.Code}, {line.Called}{(line.Now.Length > 0 ? $": {line.Now}" : "")}{(line.Proposed is { } proposed ? $"; {proposed}" : "")}.", width).Take(2).Select(text => Line.Of(text, Tone.Quiet))]
        : [];

    public override async Task RefreshAsync()
    {
        _seen = await desk.Store.Do(register => register.LookAround.StockTake(id));
        _lines = [.. _seen.Lines.OrderBy(line => line.IsOpen ? 0 : line.Outcome == StockOutcome.Present ? 2 : 1)];
    }

    private Opening AskForAll()
    {
        var open = _lines.Where(line => line.IsOpen).ToList();
        var (strangers, missing) = (open.Count(line => line.Outcome == StockOutcome.Stranger), open.Count(line => line.Outcome == StockOutcome.Missing));
        string?[] parts = [strangers > 0 ? $"put {Counted.Of(strangers, "stranger")} away here" : null, missing > 0 ? $"say of {Counted.Figure(missing)} missing that nobody knows where" : null];

        return Question.YesNo($"Accept all: {string.Join(", and ", parts.OfType<string>())}?", "accept all", () => SettleAsync(open));
    }

    private Task<Opening?> AcceptAsync(StockLineSeen line) => SettleAsync([line]);

    private async Task<Opening?> SettleAsync(List<StockLineSeen> lines)
    {
        StockSettlement settlement = new()
        {
            PutStrangersAway = lines.Any(line => line.Outcome == StockOutcome.Stranger),
            LoseMissing = lines.Any(line => line.Outcome == StockOutcome.Missing),
            Only = ScanList.OfTyped(string.Join(',', lines.Select(line => line.Code))),
        };
        var sheets = lines.Where(line => line.Thing?.Impression is not null).Select(line => line.Code).ToList();
        ImpressionChoice choice = new() { Sheets = string.Join(", ", sheets) };
        var (sentence, meant) = await desk.Store.Do(register =>
        {
            var settled = register.SettleStock.Run(id, settlement);
            var seen = register.LookAround.StockTake(id);

            return (
                StockSaid.Settled(seen, settled, seen.Take.Taken),
                sheets.Count == lines.Count ? LinksMeant.LastOf([.. register.LookAround.Chosen(choice).SelectMany(chosen => chosen.Sheets)]) : null);
        });
        desk.Say(sentence, Tone.Good);
        desk.Undo = meant is null ? null : new Undoing("accepting", () => desk.Store.Do(register => SheetSaid.TakenBack(register.TakeLinkBack.Run(choice, move: true, transfer: false, meant), move: true, transfer: false)));
        await RefreshAsync();

        return null;
    }

    private string[] Cells(StockLineSeen line) => [StockShown.Outcome(line.Outcome), line.Code, line.Called, line.Now == $"in {_seen?.Path}" ? "here" : line.Now, line.Proposed ?? ""];
}
