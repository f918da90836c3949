using System.CommandLine;
using EditionRegister.Domain.Planning;
using EditionRegister.UseCases.Planning;

namespace EditionRegister.Cli;

/// <summary><c>edreg plan</c>: how many sheets to start, and how much paper that is.</summary>
internal static class PlanCommand
{
    private const double Hundredths = 10_000;
    private const int UsuallySure = 9_500;

    private static readonly Column[] Columns = [new("start", IsRight: true), new("enough good", IsRight: true)];

    public static Command Create(CommandContext context)
    {
        var good = Opt.Some("--good", "Good sheets wanted, proofs included.");
        good.Required = true;
        var passes = Opt.Some("--passes", "Passes they go through.");
        passes.Required = true;
        var keep = ShareOption.Create("--keep", "What one pass keeps, in per cent. Else as the passes of this register kept.");
        var sure = ShareOption.Create("--sure", "How sure it is to be, in per cent. Else 95.");
        PaperOptions paper = new();
        CommandWithExample command = new("plan", "Plans how many sheets to start so that enough come through all passes, and how much paper that takes. Changes nothing.", "edreg plan --good 20 --passes 4 --keep 97") { good, passes, keep, sure };
        paper.AddTo(command);

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            double? rate = line.GetValue(keep) is { } given ? given / Hundredths : null;
            var planned = register.PlanSheets.Run(line.GetValue(good)!.Value, line.GetValue(passes)!.Value, rate, (line.GetValue(sure) ?? UsuallySure) / Hundredths);
            var pieces = paper.Read(line);
            printer.Show(
                text: () => Print(printer, planned, pieces, paper.KeepsDeckle(line)),
                json: json => PlanJson.Write(json, planned, pieces));
        }));

        return command;
    }

    private static void Print(Printer printer, SheetsPlanned planned, PaperPieces? pieces, bool keepsDeckle)
    {
        var plan = planned.Plan;
        printer.Line(PlanText.Head(plan));
        printer.Table(Columns, plan.Rows.Select(row => (string[])[Counted.Figure(row.Sheets), PlanText.Probability(row.Probability)]));
        printer.Line(PlanText.Answer(plan));

        foreach (var line in PlanText.Learned(planned))
        {
            printer.Line(line);
        }

        if (pieces is not null)
        {
            printer.Line(PlanText.Paper(pieces, planned.Safer?.Start ?? plan.Start, keepsDeckle));
        }
    }
}
