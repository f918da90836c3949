using System.CommandLine;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition show</c>: every report of a sheet, and what is new since it went out.</summary>
internal static class ConditionShowCommand
{
    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The code of the sheet.");
        CommandWithExample command = new("show", "Shows every condition report of a sheet, and what is new since it went out.", "edreg condition show 7KQ4-M2X3") { code };
        command.SetAction(line => context.Look(line, (register, printer) => Print(printer, register.LookAround.Impression(line.GetRequiredValue(code)))));

        return command;
    }

    private static void Print(Printer printer, ImpressionSeen seen)
    {
        var (work, sheet) = (seen.Work, seen.Impression);

        printer.Show(
            text: () =>
            {
                printer.Line($"{sheet.ShownCode}: {work.NumberOf(sheet)}, {Called.Work(work)}; condition {sheet.Condition ?? "not said"}.");

                foreach (var report in sheet.ConditionReports)
                {
                    printer.Line();
                    printer.Facts([.. ConditionShown.Facts(work, report)]);
                    var remarks = ConditionShown.Remarks(work, report);

                    if (remarks.Rows.Count > 0)
                    {
                        printer.Table([.. remarks.Columns.Select(column => new Column(column.Head, column.IsRight))], remarks.Rows);
                    }

                    if (ConditionShown.Compared(work, sheet, report) is { } compared)
                    {
                        printer.Line(compared);
                    }
                }

                printer.Line();
                printer.Line(sheet.ConditionReports.Count == 0 ? "No report yet. `edreg condition add` writes one." : ConditionSaid.Caution);
            },
            json: json =>
            {
                json.WriteString("code", sheet.ShownCode);
                json.WriteString("title", work.ShownTitle);
                json.WriteString("number", work.NumberOf(sheet));
                json.WriteString("condition", sheet.Condition);
                ConditionJson.Reports(json, work, sheet);
            });
    }
}
