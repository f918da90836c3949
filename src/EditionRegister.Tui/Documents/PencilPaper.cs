using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>What belongs in pencil under the image of each sheet, to be read at the table where it is written.</summary>
internal sealed class PencilPaper() : Paper("p", "pencil lines: what is written under the image")
{
    private const int CodeColumns = 9;
    private const int MostColumns = 22;

    public override bool IsWritten => false;

    public override async Task<PreviewLeaves> PreviewAsync(Desk desk, PaperOrder order)
    {
        var spelled = await desk.Store.Do(register => register.SpellPencil.Run(order.Choice));

        return new PreviewLeaves(
            "Under the image: the number at left, the title in the middle, the signature at right.",
            [new PreviewLeaf(Counted.Sheets(spelled.Count), width => Text(spelled, width))]);
    }

    public override Task<Written> WriteAsync(Desk desk, PaperOrder order) => throw new InvalidOperationException("Pencil lines are read, not written.");

    private static IEnumerable<Line> Text(IReadOnlyList<(string Code, PencilText Text)> spelled, int width)
    {
        var left = Columns(spelled, "left", text => text.Number);
        var right = Columns(spelled, "right", text => text.Signature);
        var middle = width - CodeColumns - left - right - 8;

        return
        [
            .. Row("code", "left", "middle", "right", Tone.Quiet),
            .. spelled.SelectMany(sheet => Row(sheet.Code, sheet.Text.Number, sheet.Text.Title, sheet.Text.Signature, Tone.Plain)),
        ];

        IEnumerable<Line> Row(string code, string number, string title, string signature, Tone tone) =>
            SideBySide.Of((code, CodeColumns, Tone.Quiet), (number, left, tone), (title, middle, tone), (signature, right, tone));
    }

    private static int Columns(IReadOnlyList<(string Code, PencilText Text)> spelled, string head, Func<PencilText, string> part) =>
        Math.Clamp(spelled.Select(sheet => TextWidth.Of(SafeText.Show(part(sheet.Text)))).DefaultIfEmpty(1).Max(), head.Length, MostColumns);
}
