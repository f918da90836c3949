using System.CommandLine;
using EditionRegister.Domain.Conditions;
using EditionRegister.UseCases.Conditions;

namespace EditionRegister.Cli;

/// <summary><c>edreg condition add</c>: records how sheets are.</summary>
internal static class ConditionAddCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        var occasion = Opt.Word("--occasion", ConditionOccasion.All, "Why they were examined. Else at-rest.");
        var date = Opt.Date("--date", "When. Else today.");
        var examiner = Opt.Text("--examiner", "WHO", "Who looked: a name or number of the address book. Else the one who writes.");
        var summary = Opt.Text("--summary", "TEXT", "In a sentence: no fault seen.");
        var remarks = Opt.Texts("--remark", "REMARK", $"One thing seen: {RemarkMade.Form}; #4 at its end names picture 4.");
        var condition = Opt.Text("--condition", "TEXT", "What the sheets' short present condition is from now on. Else it stays as it is.");
        CommandWithExample command = new("add", "Records a condition report for each sheet chosen.", "edreg condition add --sheets 7KQ4-M2X3 --occasion coming-back --remark \"dented-corner@lower left: 3 mm\"");
        chooser.AddTo(command);

        foreach (var option in new Option[] { occasion, date, examiner, summary, remarks, condition })
        {
            command.Add(option);
        }

        command.SetAction(line => context.Record(line, register =>
        {
            ConditionToReport report = new()
            {
                Occasion = line.GetValue(occasion) ?? ConditionOccasion.AtRest,
                Date = context.DayOf(line.GetValue(date)),
                Examiner = line.GetValue(examiner),
                Summary = line.GetValue(summary),
                Remarks = line.GetValue(remarks) ?? [],
                Condition = line.GetValue(condition),
            };
            var sheets = register.ReportCondition.Run(chooser.Read(line), report);

            return new Recorded(ConditionSaid.Reported(sheets, report.Occasion, report.Date, report.Summary, report.Remarks.Count), json =>
            {
                json.WriteNumber("sheets", sheets);
                json.WriteString("occasion", report.Occasion);
                json.Date("examined", report.Date);
                json.WriteNumber("remarks", report.Remarks.Count);
                json.WriteString("condition", report.Condition);
            })
            {
                More = printer =>
                {
                    foreach (var care in ConditionSaid.Cares(report.Remarks.Select(remark => RemarkMade.Read(remark).Term)))
                    {
                        printer.Line(care);
                    }
                },
            };
        }));

        return command;
    }
}
