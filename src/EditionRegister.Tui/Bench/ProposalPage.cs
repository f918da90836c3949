using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Tui.Bench;

/// <summary>The sheets proposed to be kept, and why; only y sorts anything, and on the sorting page each can be sorted otherwise.</summary>
internal sealed class ProposalPage(Desk desk, long work, int run, int keep) : TextPage
{
    private KeptProposed? _proposed;

    public override string Title => "Proposal";

    public override string Explains =>
        "Worked out from the grades: the sheets that are cleanest and most alike. A sheet lacks what its marks are short of 5, and differs by the differences of its marks from the sheet in the middle; "
        + "the sheets are taken that lack and differ least together. It decides nothing: look at the sheets. y sorts those proposed as kept and goes back to the pile, where each can be sorted otherwise; the others stay as they are.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. _proposed is null ? Array.Empty<KeyDeed>() : [new KeyDeed("y", "keep these", TakeAsync) { Explained = "Sorts the proposed sheets as kept; all others stay as they are." }],
        KeyDeed.Opens("n", "another number", () => Ask(desk, work, run, keep)),
        KeyDeed.Opens("Esc", "back to the pile", () => Back.Once),
    ];

    /// <summary>Asks how many are wanted, and opens the proposal.</summary>
    public static Form Ask(Desk desk, long work, int run, int? keep) => new("How many sheets are to be kept?",
        [new Field("Sheets to keep", keep is { } before ? Counted.Figure(before) : "") { IsNeeded = true, Form = "a whole number, such as 12", Wrong = Fields.Count("Sheets to keep", least: 1).Wrong }],
        async form =>
        {
            var count = Fields.Whole(form["Sheets to keep"])!.Value;
            await desk.Store.Do(register => register.ProposeKept.Run(work, run, count));

            return new Saved("Nothing is sorted yet.", new ProposalPage(desk, work, run, count));
        })
    {
        Name = "Sheets to keep",
        About = ["The cleanest and most alike are worked out from the grades and shown; nothing is sorted by that."],
    };

    public override async Task RefreshAsync() => _proposed = await desk.Store.Do(register => register.ProposeKept.Run(work, run, keep));

    public override IReadOnlyList<Line> Head(int width) => _proposed is { } shown
        ? [.. Wrap.Of(SortingSaid.Proposed(shown), width).Select(line => Line.Of(line, Tone.Strong)), Line.Empty]
        : [];

    public override IReadOnlyList<Line> Text(int width) => _proposed is not { Proposal: var shown } ? [] :
    [
        .. Table(ProposalTable.Short("Proposed:", shown.Sheets), width),
        .. shown.Others.Count == 0 ? [] : (IEnumerable<Line>)[Line.Empty, .. Table(ProposalTable.Short("Not proposed:", shown.Others), width)],
        Line.Empty,
        .. SortingSaid.HowProposed(shown).SelectMany(sentence => Wrap.Of(sentence, width)).Select(line => Line.Of(line, Tone.Quiet)),
    ];

    private static IEnumerable<Line> Table(ShownTable table, int width) => [Line.Of(table.Heading, Tone.Strong), .. TableLines.Of(table, width)];

    private async Task<Opening?> TakeAsync()
    {
        var sheets = _proposed!.Proposal.Sheets.Select(one => one.Sheet).ToList();
        SheetsAsSeen seen = new(sheets);
        await desk.Store.Do(register => register.SortPulls.Run(ProposeKept.ChoiceOf(_proposed.Proposal), "kept", seen: seen));
        desk.Say(SortingSaid.Taken(_proposed), Tone.Good);
        desk.Undo = new Undoing("the proposal", async () =>
        {
            await desk.Store.Do(register =>
            {
                foreach (var same in sheets.GroupBy(sheet => sheet.Standing))
                {
                    register.SortPulls.Run(new() { Sheets = string.Join(", ", same.Select(sheet => sheet.ShownCode)) }, same.Key);
                }

                return sheets.Count;
            });

            return $"{Counted.Sheets(sheets.Count)} sorted back to what each was before the proposal.";
        });

        return Back.Once;
    }
}
