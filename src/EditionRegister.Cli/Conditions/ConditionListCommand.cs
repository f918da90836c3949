using System.CommandLine;
using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition list</c>: the newest report of each sheet chosen.</summary>
internal static class ConditionListCommand
{
    private static readonly Column[] Columns = [new("code"), new("sheet"), new("reports", IsRight: true), new("newest"), new("occasion"), new("in short"), new("condition")];

    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        CommandWithExample command = new("list", "Lists the newest condition report of each sheet chosen; without a choice, of every sheet that has one.", "edreg condition list --lying-in \"Drawer 2\"");
        chooser.AddTo(command);

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var found = (
                from chosen in chooser.IsAsked(line)
                    ? register.LookAround.Chosen(chooser.Read(line))
                    : [.. register.LookAround.Works().Select(work => new ChosenOfWork(work, [.. work.Impressions.Where(sheet => sheet.ConditionReports.Count > 0)]))]
                from sheet in chosen.Sheets
                select (chosen.Work, Sheet: sheet, Newest: Newest(sheet))).ToList();

            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, found.Select(one => (string[])
                    [
                        one.Sheet.ShownCode, $"{Called.Work(one.Work)} {one.Work.NumberOf(one.Sheet)}", Counted.Figure(one.Sheet.ConditionReports.Count),
                        one.Newest?.Examined.ToString() ?? "", one.Newest is null ? "" : Called.Plain(one.Newest.Occasion),
                        one.Newest is null ? "" : one.Newest.Summary ?? string.Join("; ", one.Newest.Remarks.Select(remark => ConditionShown.Remark(one.Work, remark))), one.Sheet.Condition ?? "",
                    ]));
                    printer.Line($"{Counted.Sheets(found.Count)}.");
                },
                json: json => json.Each("sheets", found, one =>
                {
                    json.WriteString("code", one.Sheet.ShownCode);
                    json.WriteString("title", one.Work.ShownTitle);
                    json.WriteString("number", one.Work.NumberOf(one.Sheet));
                    json.WriteString("condition", one.Sheet.Condition);
                    ConditionJson.Reports(json, one.Work, one.Sheet);
                }));
        }));

        return command;
    }

    private static ConditionReport? Newest(Impression sheet) => sheet.ConditionReports is [.., var newest] ? newest : null;
}
