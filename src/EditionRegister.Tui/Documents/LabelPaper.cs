using EditionRegister.Domain.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.Tui.Documents;

/// <summary>Labels for folder, sleeve, mat or backing, on sheets of labels.</summary>
internal sealed class LabelPaper() : Paper("l", "labels for folder, sleeve, mat or backing")
{
    public override bool IsOnLabels => true;

    public override async Task<PreviewLeaves> PreviewAsync(Desk desk, PaperOrder order)
    {
        var planned = await desk.Store.Do(register => register.PlanLabels.Run(order.Choice, order.LabelSheet!.Name, order.From));

        return new PreviewLeaves(PapersSaid.Planned(planned), [.. planned.Labels.Select((label, at) => new PreviewLeaf(label.Code, width => Text(planned, label, at, width)))]);
    }

    public override async Task<Written> WriteAsync(Desk desk, PaperOrder order)
    {
        desk.Progress($"Drawing {Counted.Of(order.Codes.Count, "label")}…");
        var (planned, written) = await desk.Store.Do(register => (
            register.PlanLabels.Run(order.Choice, order.LabelSheet!.Name, order.From),
            register.WriteLabels.Run(order.Choice, order.LabelSheet.Name, order.From, order.Folder is { } folder ? Path.Combine(folder, "labels.pdf") : null)));
        desk.Written.Add([written.Path]);
        var next = planned.Left == 0 ? "" : $" The next labels can begin at position {Counted.Figure(planned.NextPosition)} of the last sheet.";

        return new Written(PapersSaid.LabelsWritten(written), [written.Path], PapersSaid.MindLabels + next);
    }

    private static IEnumerable<Line> Text(LabelsPlanned planned, Label label, int at, int width)
    {
        var place = planned.FirstPosition - 1 + at;
        var per = planned.Sheet.PerSheet;
        var sheet = place / per;
        var here = (place % per) + 1;

        return
        [
            .. label.Lines.SelectMany((line, row) => Wrap.Of(line, width - 2).Select(text => Line.Of("  ").Then(text, row == 0 ? Tone.Strong : Tone.Plain))),
            .. Wrap.Of($"{label.Code}   {(label.Link is { } link ? $"QR code: {link}" : "no QR code: the register has no address for links")}", width - 2).Select(text => Line.Of("  ").Then(text)),
            Line.Of($"Sheet {Counted.Figure(sheet + 1)} of {Counted.Figure(planned.Sheets)}, position {Counted.Figure(here)}:", Tone.Quiet),
            .. new LabelSheetDrawing(planned.Sheet, sheet == 0 ? planned.FirstPosition : 1, Math.Min(per, planned.FirstPosition - 1 + planned.Labels.Count - (sheet * per)), here).Lines(width),
        ];
    }
}
