using EditionRegister.Domain.Works;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>One block, plate, stone or screen: its code, where it lies, its states, what became of it, and the passes it printed.</summary>
internal sealed class MatrixPage(Desk desk, long work, long matrix) : TextPage
{
    private Work? _work;
    private Matrix? _matrix;

    public override string Title => _matrix is { } here ? MatrixText.Alone(here) : "A block or plate";

    public override string Explains =>
        "One of the blocks, plates, stones or screens that the work is printed from, with the code that is written on it or on its wrapper. Its states are recorded as it is cut further, bitten "
        + "or reworked, so that a pass can say which of them it printed; its fate is stated once, when it is cancelled, cut away or kept. Below stand the passes it was used in.";

    public override IReadOnlyList<KeyDeed> Keys => _work is { } shown && _matrix is { } here
        ?
        [
            KeyDeed.Opens("n", "add a state", () => MatrixForms.State(desk, shown, here)) with { Explained = "Records that it was cut, bitten or reworked to another state." },
            KeyDeed.Opens("f", "state its fate", () => MatrixForms.Fate(desk, shown, here)),
            new("e", "correct it, move it", () => MatrixEditForm.OfAsync(desk, shown, here)) { Explained = "Puts right what is recorded of it, or says where it now lies and who has it." },
            .. here.Code is null ? new KeyDeed[] { new("g", "give it a code", GiveCodeAsync) { Explained = "It was recorded before blocks had codes; this draws one for it." } } : [],
        ]
        : [];

    public override async Task RefreshAsync()
    {
        _work = await desk.Store.Do(register => register.LookAround.Work(work));
        _matrix = _work.Matrices.FirstOrDefault(one => one.Id == matrix);
    }

    public override IReadOnlyList<Line> Text(int width) => _work is { } shown && _matrix is { } here
        ?
        [
            .. FactLines.Of(MatrixFacts.Of(shown, here), width),
            .. Section(MatrixFacts.States(here), "States: none recorded; n adds one.", width),
            .. Section(MatrixFacts.Passes(shown, here), "Passes: none recorded from it.", width),
        ]
        : [Line.Of("It is gone. Esc goes back to the work.", Tone.Warning)];

    private static IEnumerable<Line> Section(ShownTable table, string none, int width) =>
        table.Rows.Count == 0 ? [Line.Empty, Line.Of(none, Tone.Quiet)] : [Line.Empty, Line.Of(table.Heading, Tone.Strong), .. TableLines.Of(table, width)];

    private async Task<Opening?> GiveCodeAsync()
    {
        var now = await desk.Store.Do(register =>
        {
            register.EditMatrix.Run(work, Counted.Figure(matrix), new MatrixCorrection(), givesCode: true);

            return register.LookAround.Work(work);
        });
        desk.Say(BenchSaid.CodeGiven(now, now.Matrices.First(one => one.Id == matrix)), Tone.Good);

        return null;
    }
}
